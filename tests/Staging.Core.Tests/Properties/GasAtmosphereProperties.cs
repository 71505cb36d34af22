using FsCheck.Xunit;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Properties;

public class GasAtmosphereProperties
{
    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Pressure_and_density_fall_with_altitude(AltitudeCase c)
    {
        var site = Site(c);
        foreach (IAtmosphere air in new IAtmosphere[] { StandardAtmosphere.Us1976, site })
        {
            AirSample lower = air.At(Math.Max(c.Lower, air.Floor_m));
            AirSample upper = air.At(Math.Max(c.Upper, air.Floor_m));
            Assert.True(upper.Pressure_Pa <= lower.Pressure_Pa);
            Assert.True(upper.Density_kg_per_m3 <= lower.Density_kg_per_m3);
        }
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 300)]
    public void Every_sample_is_finite_and_positive(AltitudeCase c)
    {
        AirSample air = Site(c).At(Math.Max(c.Upper, c.Elevation - 1000));
        Assert.True(air.Pressure_Pa > 0 && double.IsFinite(air.Pressure_Pa));
        Assert.True(air.Temperature_K > 100 && air.Density_kg_per_m3 > 0 && air.SoundSpeed_m_per_s > 200);
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 200)]
    public void Pressure_at_all_heights_scales_with_pressure_at_the_ground_in_dry_air(AltitudeCase c)
    {
        AltitudeCase dry = c with { Humidity = 0 };
        double z = Math.Max(c.Upper, c.Elevation);
        double one = Site(dry).At(z).Pressure_Pa;
        double less = Site(dry with { Pressure = c.Pressure / 1.01 }).At(z).Pressure_Pa;
        Assert.Equal(1.01, one / less, 1e-12);
    }

    [Property(Arbitrary = [typeof(GasGenerators)], MaxTest = 200)]
    public void Warmer_and_moister_air_is_thinner_at_the_ground_and_holds_more_pressure_aloft(AltitudeCase c)
    {
        double z = Math.Max(c.Upper, c.Elevation + 10);
        AirSample dryGround = Site(c with { Humidity = 0 }).At(c.Elevation);
        AirSample moistGround = Site(c with { Humidity = 1 }).At(c.Elevation);
        Assert.True(moistGround.Density_kg_per_m3 < dryGround.Density_kg_per_m3);
        Assert.True(Site(c with { Humidity = 1 }).At(z).Pressure_Pa > Site(c with { Humidity = 0 }).At(z).Pressure_Pa);
        Assert.True(Site(c with { Temperature = c.Temperature + 5 }).At(z).Pressure_Pa > Site(c).At(z).Pressure_Pa);
    }

    private static SiteAtmosphere Site(AltitudeCase c) => new(new SiteConditions
    {
        Elevation = Length.FromMeters(c.Elevation),
        Pressure = Pressure.FromPascals(c.Pressure),
        Temperature = Temperature.FromKelvins(c.Temperature),
        RelativeHumidity = c.Humidity,
    });
}
