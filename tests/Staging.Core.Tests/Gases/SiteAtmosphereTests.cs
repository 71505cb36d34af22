using System.Collections.Immutable;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Gases;

public class SiteAtmosphereTests
{
    [Theory]
    [InlineData(-300)]
    [InlineData(0)]
    [InlineData(1500)]
    [InlineData(4000)]
    public void Standard_dry_weather_at_any_site_is_the_standard_atmosphere(double elevation)
    {
        AirSample ground = StandardAtmosphere.Us1976.At(elevation);
        var site = new SiteAtmosphere(Weather(elevation, ground.Pressure_Pa, ground.Temperature_K, 0));
        for (double z = site.Floor_m; z <= site.Ceiling_m; z += 1000)
        {
            AirSample ours = site.At(z);
            AirSample standard = StandardAtmosphere.Us1976.At(z);
            Assert.Equal(1, ours.Pressure_Pa / standard.Pressure_Pa, 1e-12);
            Assert.Equal(1, ours.Temperature_K / standard.Temperature_K, 1e-12);
            Assert.Equal(1, ours.Density_kg_per_m3 / standard.Density_kg_per_m3, 1e-12);
            Assert.Equal(1, ours.SoundSpeed_m_per_s / standard.SoundSpeed_m_per_s, 1e-12);
        }
    }

    [Theory]
    [InlineData(0, 101325, 303.15, 0.9)]
    [InlineData(1600, 83500, 310, 0.4)]
    [InlineData(250, 99000, 253.15, 1)]
    public void Pressure_gradient_balances_the_weight_of_the_moist_air(double elevation, double p, double T, double h)
    {
        var site = new SiteAtmosphere(Weather(elevation, p, T, h));
        const double dz = 1;
        for (double z = site.Floor_m + 10; z < 30_000; z += 173)
        {
            double weight = site.At(z).Density_kg_per_m3 * HydrostaticProfile.StandardGravity
                * Math.Pow(HydrostaticProfile.EarthRadius / (HydrostaticProfile.EarthRadius + z), 2);
            double gradient = (site.At(z + dz).Pressure_Pa - site.At(z - dz).Pressure_Pa) / (2 * dz);
            Assert.Equal(-1, gradient / weight, 1e-6);
        }
    }

    [Fact]
    public void Ground_pressure_and_temperature_are_the_ones_entered()
    {
        AirSample air = new SiteAtmosphere(Weather(1234, 87_000, 299, 0.6)).At(1234);
        Assert.Equal(87_000, air.Pressure_Pa, 1e-7);
        Assert.Equal(299, air.Temperature_K, 1e-10);
    }

    [Fact]
    public void Relative_humidity_stays_near_that_of_the_ground_in_the_first_kilometre()
    {
        const double h = 0.6;
        var site = new SiteAtmosphere(Weather(0, 101325, 295, h));
        AirSample air = site.At(1000);
        double x = (1 - air.Density_kg_per_m3 * HydrostaticProfile.AirGasConstant * air.Temperature_K / air.Pressure_Pa) / MoistAir.Lightness;
        double saturated = MoistAir.VapourMoleFraction(Pressure.FromPascals(air.Pressure_Pa), Temperature.FromKelvins(air.Temperature_K), 1);
        Assert.Equal(h, x / saturated, 0.01);
    }

    [Fact]
    public void Moist_air_is_lighter_and_carries_sound_faster()
    {
        AirSample dry = new SiteAtmosphere(Weather(0, 101325, 303.15, 0)).At(0);
        AirSample moist = new SiteAtmosphere(Weather(0, 101325, 303.15, 1)).At(0);
        Assert.True(moist.Density_kg_per_m3 < dry.Density_kg_per_m3);
        Assert.True(moist.SoundSpeed_m_per_s > dry.SoundSpeed_m_per_s);
    }

    [Fact]
    public void Below_its_floor_it_refuses_and_names_the_range()
    {
        var site = new SiteAtmosphere(Weather(1500, 84_000, 290, 0.3));
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => site.At(499));
        Assert.Contains("between 500 and 86000 m", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sea_level_pressure_entered_for_a_high_site_is_noticed()
    {
        ImmutableArray<ModelFinding> findings = Weather(1500, 101_325, 290, 0.3).Check();
        ModelFinding finding = Assert.Single(findings);
        Assert.Equal("GAS001", finding.Code);
        Assert.Contains("1013.2 hPa", finding.Message, StringComparison.Ordinal);
        Assert.Empty(Weather(1500, 84_000, 290, 0.3).Check());
    }

    [Theory]
    [InlineData(0, 1.4)]
    [InlineData(1, 33.6 / (33.6 - 8.314472))]
    [InlineData(0.04, 1 + 8.314472 / (0.96 * 2.5 * 8.314472 + 0.04 * (33.6 - 8.314472)))]
    public void Gamma_of_moist_air_is_that_of_the_heat_capacities_of_its_gases(double x, double gamma) =>
        // The heat of vapour, 3.04 R, is rounded to half of its last digit: 0.005/3.04 of gamma - 1.
        Assert.Equal(gamma, MoistAir.Gamma(x), x * 0.0017 * (gamma - 1) + 1e-15);

    [Fact]
    public void Humidity_is_a_fraction_not_a_percentage()
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => Weather(0, 101_325, 290, 55));
        Assert.Contains("RelativeHumidity is 55; it must be between 0 and 1", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(10_000, 330, 1)]
    [InlineData(10_000, 330, 0.6)]
    [InlineData(17_000, 330, 1)]
    public void More_vapour_than_pressure_is_refused_with_all_that_it_takes(double p, double T, double h)
    {
        Pressure pressure = Pressure.FromPascals(p);
        Temperature temperature = Temperature.FromKelvins(T);
        foreach (Func<object> call in (Func<object>[])[() => MoistAir.VapourMoleFraction(pressure, temperature, h), () => MoistAir.DensityAt(pressure, temperature, h)])
        {
            var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => call());
            Assert.Equal("relativeHumidity", refusal.ParamName);
            Assert.Contains(FormattableString.Invariant($"pressure {p} Pa and temperature {T} K"), refusal.Message, StringComparison.Ordinal);
            Assert.Contains("it must be between 0 and 0.", refusal.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Hot_thin_air_may_be_as_moist_as_its_pressure_allows() =>
        Assert.InRange(MoistAir.VapourMoleFraction(Pressure.FromPascals(10_000), Temperature.FromKelvins(330), 0.57), 0.97, 1);

    private static SiteConditions Weather(double elevation, double pressure, double temperature, double humidity) => new()
    {
        Elevation = Length.FromMeters(elevation),
        Pressure = Pressure.FromPascals(pressure),
        Temperature = Temperature.FromKelvins(temperature),
        RelativeHumidity = humidity,
    };
}
