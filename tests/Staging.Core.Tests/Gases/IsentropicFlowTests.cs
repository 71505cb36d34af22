using Staging.Core.Gases;

namespace Staging.Core.Tests.Gases;

public class IsentropicFlowTests
{
    [Fact]
    public void At_rest_every_ratio_is_one_and_nothing_flows()
    {
        Assert.Equal(1, IsentropicFlow.TemperatureRatio(0, 1.4));
        Assert.Equal(1, IsentropicFlow.PressureRatio(0, 1.4));
        Assert.Equal(1, IsentropicFlow.DensityRatio(0, 1.4));
        Assert.Equal(0, IsentropicFlow.MassFlowFunction(0, 1.4));
        Assert.Equal(0, IsentropicFlow.MachFromPressureRatio(1, 1.4));
        Assert.Equal(0, IsentropicFlow.MachFromTemperatureRatio(1, 1.4));
        Assert.Equal(0, IsentropicFlow.MachFromDensityRatio(1, 1.4));
    }

    [Fact]
    public void A_small_pressure_difference_gives_Bernoulli_speed()
    {
        const double gap = 1e-9;
        double M = IsentropicFlow.MachFromPressureRatio(1 - gap, 1.4);
        Assert.Equal(Math.Sqrt(2 * (1 - (1 - gap)) / 1.4), M, 1e-9 * M);
    }

    [Theory]
    [InlineData(1.05)]
    [InlineData(1.14)]
    [InlineData(1.4)]
    [InlineData(5.0 / 3)]
    public void Area_ratio_of_one_is_sonic_on_both_branches_and_the_sonic_point_is_reached_smoothly(double gamma)
    {
        Assert.Equal(1, IsentropicFlow.SubsonicMach(1, gamma));
        Assert.Equal(1, IsentropicFlow.SupersonicMach(1, gamma));
        foreach (double excess in new[] { 4.5e-16, 1e-12, 1e-8, 1e-4, 1e-2 })
        {
            double parabola = Math.Sqrt((gamma + 1) / 2 * excess);
            Assert.Equal(1 - parabola, IsentropicFlow.SubsonicMach(1 + excess, gamma), 1.2 * parabola * parabola + 0.02 * parabola);
            Assert.Equal(1 + parabola, IsentropicFlow.SupersonicMach(1 + excess, gamma), 1.2 * parabola * parabola + 0.02 * parabola);
        }
    }

    [Fact]
    public void A_huge_area_ratio_is_nearly_at_rest_or_very_fast()
    {
        double slow = IsentropicFlow.SubsonicMach(1e10, 1.4);
        Assert.Equal(1e10, IsentropicFlow.AreaRatio(slow, 1.4), 1e-3);
        double fast = IsentropicFlow.SupersonicMach(1e10, 1.4);
        Assert.Equal(1e10, IsentropicFlow.AreaRatio(fast, 1.4), 1e-2);
    }

    [Theory]
    [InlineData(-0.1, 1.4, "mach")]
    [InlineData(double.NaN, 1.4, "mach")]
    [InlineData(2, 1.0, "gamma")]
    [InlineData(2, double.NaN, "gamma")]
    public void Numbers_outside_their_range_are_refused_by_name(double mach, double gamma, string name)
    {
        Assert.Equal(name, Assert.Throws<ArgumentOutOfRangeException>(() => IsentropicFlow.PressureRatio(mach, gamma)).ParamName);
        Assert.Equal(name, Assert.Throws<ArgumentOutOfRangeException>(() => NormalShock.PressureRatio(mach, gamma)).ParamName);
        Assert.Equal(name, Assert.Throws<ArgumentOutOfRangeException>(() => FannoFlow.FrictionToSonic(mach, gamma)).ParamName);
    }

    [Fact]
    public void A_pressure_ratio_above_one_or_an_area_ratio_below_one_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => IsentropicFlow.MachFromPressureRatio(1.0001, 1.4));
        Assert.Throws<ArgumentOutOfRangeException>(() => IsentropicFlow.MachFromPressureRatio(0, 1.4));
        Assert.Throws<ArgumentOutOfRangeException>(() => IsentropicFlow.SubsonicMach(0.999, 1.4));
        Assert.Throws<ArgumentOutOfRangeException>(() => IsentropicFlow.AreaRatio(0, 1.4));
    }
}
