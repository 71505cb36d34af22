using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.BurnThrough;

/// <summary>How fast the pieces fly: two bounds from work.</summary>
public class PieceThrowTests
{
    [Fact]
    public void Slow_is_the_work_of_a_steady_pressure_over_half_a_radius()
    {
        const double over = 3e5, radius = 0.006, density = 1700, thickness = 1.5e-3;
        double v = PieceThrow.Slow(over, radius, density, thickness), mass = density * Math.PI * radius * radius * thickness;
        Assert.Equal(over * Math.PI * radius * radius * radius / 2, 0.5 * mass * v * v, 1e-12);
    }

    [Theory]
    [InlineData(1.1)]
    [InlineData(3)]
    [InlineData(8)]
    [InlineData(60)]
    public void Fast_is_the_isentropic_work_beyond_pushing_back_the_air(double ratio)
    {
        // The integral of (p - pa) dV along p V^gamma = const, summed by Simpson's rule over the logarithm of the volume.
        const double outside = 1e5, volume = 5e-6, gamma = 1.14, mass = 2e-4;
        double end = Math.Log(ratio) / gamma, sum = 0;
        const int n = 2000;
        for (int i = 0; i <= n; i++)
        {
            double x = end * i / n, v = volume * Math.Exp(x);
            sum += (i is 0 or n ? 1 : i % 2 == 1 ? 4 : 2) * (ratio * outside * Math.Exp(-gamma * x) - outside) * v;
        }

        double fast = PieceThrow.Fast(ratio * outside, outside, volume, gamma, mass);
        Assert.InRange(0.5 * mass * fast * fast / (sum * end / (3 * n)) - 1, -1e-9, 1e-9);
    }

    [Fact]
    public void Hardly_above_the_outside_the_work_is_of_second_order()
    {
        // W -> V dp^2/(2 gamma p).
        const double dp = 100, p = 1e5, volume = 5e-6, gamma = 1.14, mass = 2e-4;
        double fast = PieceThrow.Fast(p + dp, p, volume, gamma, mass);
        Assert.InRange(0.5 * mass * fast * fast / (volume * dp * dp / (2 * gamma * p)) - 1, -2e-3, 2e-3);
    }

    [Theory]
    [InlineData(12, 45, 2.8)]
    [InlineData(12, 4, 2.8)]
    [InlineData(12, 45, 5)]
    [InlineData(40, 15, 10)]
    public void Slow_never_exceeds_fast_nor_fast_the_work_of_the_chamber(double diameter, double burnt, double throat)
    {
        GapSource.EndBurner motor = Grains.Whole with
        {
            GrainDiameter = Length.FromMillimeters(diameter),
            BurntLength = Length.FromMillimeters(burnt),
            NozzleThroatDiameter = Length.FromMillimeters(throat),
        };
        BurnThroughEstimate e = motor.BurnThrough();
        double p = e.ChamberPressure.Pascals, pa = 101325, gamma = motor.Products.Equivalent().HeatCapacityRatio;
        double work = e.ChamberVolume.CubicMeters
            * (p * (1 - Math.Pow(pa / p, 1 - 1 / gamma)) / (gamma - 1) - pa * (Math.Pow(p / pa, 1 / gamma) - 1));
        Assert.True(e.SlowSpeed <= e.FastSpeed);
        Assert.InRange(0.5 * e.PieceMass.Kilograms * Math.Pow(e.FastSpeed.MetersPerSecond, 2) / work - 1, -1e-9, 1e-9);
        Assert.InRange(e.PieceSpeed / e.SlowSpeed, 1, e.FastSpeed / e.SlowSpeed);
    }

    [Fact]
    public void Share_leads_from_slow_to_fast_by_factors_and_a_stated_speed_replaces_it()
    {
        BurnThroughEstimate slow = (Grains.Whole with { SpeedShare = 0 }).BurnThrough(), fast = (Grains.Whole with { SpeedShare = 1 }).BurnThrough();
        BurnThroughEstimate middle = (Grains.Whole with { SpeedShare = 0.5 }).BurnThrough();
        Assert.Equal(slow.SlowSpeed, slow.PieceSpeed);
        Assert.InRange(fast.PieceSpeed / fast.FastSpeed - 1, -1e-12, 1e-12);
        Assert.InRange(middle.PieceSpeed.MetersPerSecond / Math.Sqrt(middle.SlowSpeed.MetersPerSecond * middle.FastSpeed.MetersPerSecond) - 1, -1e-12, 1e-12);
        Assert.Equal(31, Grains.Whole.At(31).BurnThrough().PieceSpeed.MetersPerSecond);
    }
}
