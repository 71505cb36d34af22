using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Gases;

public class NormalShockTests
{
    [Theory]
    [InlineData(1.1)]
    [InlineData(1.4)]
    public void A_vanishing_shock_changes_nothing(double gamma)
    {
        Assert.Equal(1, NormalShock.DownstreamMach(1, gamma), 1e-15);
        Assert.Equal(1, NormalShock.PressureRatio(1, gamma));
        Assert.Equal(1, NormalShock.DensityRatio(1, gamma), 1e-15);
        Assert.Equal(0, NormalShock.EntropyRise(1, gamma));
        Assert.Equal(1 / IsentropicFlow.PressureRatio(1, gamma), NormalShock.PitotRatio(1, gamma), 1e-13);
    }

    [Theory]
    [InlineData(1.1, 1e-3)]
    [InlineData(1.4, 1e-5)]
    [InlineData(5.0 / 3, 1e-7)]
    public void Entropy_rises_with_the_third_power_of_strength(double gamma, double z)
    {
        double M = 1 + z / 2;
        double strength = (M - 1) * (M + 1);
        double leading = 2 * gamma / (3 * (gamma + 1) * (gamma + 1)) * Math.Pow(strength, 3);
        Assert.Equal(1, NormalShock.EntropyRise(M, gamma) / leading, 3 * z);
    }

    [Theory]
    [InlineData(1.05)]
    [InlineData(1.4)]
    [InlineData(5.0 / 3)]
    public void Series_and_logarithms_of_the_entropy_meet(double gamma)
    {
        double M = Math.Sqrt(1.05);
        double below = NormalShock.EntropyRise(M * (1 - 1e-12), gamma);
        double above = NormalShock.EntropyRise(M * (1 + 1e-12), gamma);
        Assert.Equal(1, below / above, 1e-9);
    }

    [Fact]
    public void A_strong_shock_compresses_to_the_limit()
    {
        Assert.Equal(6, NormalShock.DensityRatio(1000, 1.4), 1e-4);
        Assert.Equal(Math.Sqrt(0.4 / 2.8), NormalShock.DownstreamMach(1000, 1.4), 1e-6);
        Assert.Equal(8, NormalShock.Reflected(1000, 1.4).ReflectedPressureRatio, 1e-4);
        Assert.Equal(11, NormalShock.Reflected(1000, 1.25).ReflectedPressureRatio, 1e-3);
    }

    [Fact]
    public void A_weak_wave_doubles_its_pressure_rise_at_a_closed_end()
    {
        var r = NormalShock.Reflected(1.0001, 1.4);
        Assert.Equal(2, (r.TotalPressureRatio - 1) / (NormalShock.PressureRatio(1.0001, 1.4) - 1), 1e-3);
        Assert.Equal(1, r.ReflectedSpeed, 1e-3);
    }

    [Fact]
    public void A_shock_below_Mach_one_does_not_exist() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => NormalShock.PressureRatio(0.99, 1.4));

    [Fact]
    public void A_shock_tube_refuses_a_shock_that_its_driver_cannot_make_and_names_the_strongest()
    {
        double strongest = NormalShock.MachFromPistonSpeed(2 / (0.4 * 1), 1.4);
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => NormalShock.DriverPressureRatio(strongest * 1.001, 1.4, 1.4, 1));
        Assert.Contains("6.16228", refusal.Message, StringComparison.Ordinal);
        Assert.True(NormalShock.DriverPressureRatio(strongest * 0.9, 1.4, 1.4, 1) > 1e4);
    }

    [Fact]
    public void Equal_pressures_make_no_shock()
    {
        Assert.Equal(1, NormalShock.MachFromDriverPressureRatio(1, 1.4, 1.25, 0.5), 1e-15);
        Assert.Equal(1, NormalShock.DriverPressureRatio(1, 1.4, 1.25, 0.5));
    }

    [Fact]
    public void An_accelerating_piston_makes_its_shock_where_the_simple_wave_steepens()
    {
        // Characteristics x = (t - s)(a1 + (gamma + 1)/2 a s) of a piston x = a t^2/2 first cross at t = 2 a1/((gamma + 1) a).
        Duration t = NormalShock.FormationTime(Speed.FromMetersPerSecond(340), Acceleration.FromMetersPerSecondSquared(1e5), 1.4);
        Assert.Equal(680 / 2.4e5, t.Seconds, 1e-12);
        Length x = NormalShock.FormationDistance(Speed.FromMetersPerSecond(340), Acceleration.FromMetersPerSecondSquared(1e5), 1.4);
        Assert.Equal(340 * t.Seconds, x.Meters, 1e-12);
    }

    [Theory]
    [InlineData(1.01)]
    [InlineData(1.25)]
    [InlineData(1.4)]
    [InlineData(3)]
    public void A_shock_of_no_strength_reflects_as_none(double gamma) =>
        Assert.Equal(1, NormalShock.Reflected(1, gamma).TotalPressureRatio, 1e-12);
}
