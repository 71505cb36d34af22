using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Gases;

public class StandardAtmosphereTests
{
    private static readonly StandardAtmosphere Air = StandardAtmosphere.Us1976;

    [Theory]
    [InlineData(-5000.01)]
    [InlineData(86000.01)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Outside_its_range_it_refuses_and_names_altitude_and_range(double z)
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => Air.At(z));
        Assert.Contains("geometricAltitude_m", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("between -5000 and 86000 m", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Both_ends_of_the_range_are_answered()
    {
        Assert.Equal(320.676, Air.At(Air.Floor_m).Temperature_K, 0.01);
        Assert.Equal(186.946, Air.At(Air.Ceiling_m).Temperature_K, 0.01);
    }

    [Fact]
    public void State_is_continuous_across_every_layer()
    {
        foreach (AtmosphereLayer layer in AtmosphereLayer.Us1976)
        {
            double H = layer.Base_m;
            double z = HydrostaticProfile.EarthRadius * H / (HydrostaticProfile.EarthRadius - H);
            AirSample below = Air.At(z - 1e-6);
            AirSample above = Air.At(z + 1e-6);
            Assert.Equal(1, above.Pressure_Pa / below.Pressure_Pa, 2e-9);
            Assert.Equal(1, above.Temperature_K / below.Temperature_K, 2e-9);
        }
    }

    [Fact]
    public void Pressure_gradient_balances_weight()
    {
        const double h = 1;
        for (double z = -4900; z < 85_900; z += 537)
        {
            double weight = Air.At(z).Density_kg_per_m3 * HydrostaticProfile.StandardGravity
                * Math.Pow(HydrostaticProfile.EarthRadius / (HydrostaticProfile.EarthRadius + z), 2);
            double gradient = (Air.At(z + h).Pressure_Pa - Air.At(z - h).Pressure_Pa) / (2 * h);
            Assert.Equal(-1, gradient / weight, 1e-6);
        }
    }

    [Fact]
    public void A_sample_allocates_nothing()
    {
        double sum = 0;
        Assert.Equal(0, Allocated.By(() =>
        {
            for (double z = 0; z < 80_000; z += 100)
                sum += Air.At(z).Density_kg_per_m3;
        }));
        Assert.True(sum > 0);
    }

    [Fact]
    public void Geopotential_altitude_of_the_top_is_84852_metres() =>
        Assert.Equal(84_852, StandardAtmosphere.GeopotentialAltitude(Length.FromKilometers(86)).Meters, 0.1);
}
