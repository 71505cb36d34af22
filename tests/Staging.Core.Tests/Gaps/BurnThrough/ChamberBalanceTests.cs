using Staging.Core.Gaps;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.BurnThrough;

/// <summary>The pressure at which the throat passes what burns.</summary>
public class ChamberBalanceTests
{
    private const double Air = 101325;

    [Theory]
    [InlineData(3.5)]
    [InlineData(3.0)]
    [InlineData(2.6)]
    public void Behind_a_choked_throat_inflow_is_outflow(double throat)
    {
        foreach (BurnRateLaw law in Laws)
        {
            GapSource.EndBurner motor = Motor(throat, law);
            BurnThroughEstimate estimate = motor.BurnThrough();
            double p = estimate.ChamberPressure.Pascals, area = Math.PI / 4 * throat * throat * 1e-6;
            double burns = 1700 * ChamberBalance.Face(0.045, 0.006) * estimate.BurningRate.MetersPerSecond;
            double passes = p * area / ChamberBalance.CharacteristicVelocity(motor.Products.Equivalent().Constants, 1890);
            Assert.InRange(burns / passes - 1, -1e-12, 1e-12);
        }
    }

    [Theory]
    [InlineData(3.8)]
    [InlineData(4.5)]
    [InlineData(6)]
    [InlineData(12)]
    public void Behind_a_throat_that_is_not_choked_too(double throat)
    {
        foreach (BurnRateLaw law in Laws)
        {
            GapSource.EndBurner motor = Motor(throat, law);
            GasConstants gas = motor.Products.Equivalent().Constants;
            double p = BurnThroughEstimate.PressureOf(motor, Air), area = Math.PI / 4 * throat * throat * 1e-6;
            double burns = 1700 * ChamberBalance.Face(0.045, 0.006) * law.At(Pressure.FromPascals(p)).MetersPerSecond;
            double passes = p * area * IsentropicFlow.ThroatMassFlow(Air / p, gas.Gamma) / Math.Sqrt(gas.R * 1890);
            Assert.InRange(burns / passes - 1, -1e-9, 1e-9);
            Assert.True(p > Air);
        }
    }

    [Fact]
    public void Both_regimes_meet_and_a_wider_throat_always_lowers_the_pressure()
    {
        double last = double.PositiveInfinity;
        for (double throat = 2; throat < 12; throat *= 1.001)
        {
            double p = BurnThroughEstimate.PressureOf(Motor(throat, BurnRateLaw.Shidlovskiy), Air);
            Assert.True(p < last);
            Assert.True(double.IsInfinity(last) || p / last > 0.99, $"from {last} to {p} Pa at {throat} mm");
            last = p;
        }
    }

    [Fact]
    public void A_12_mm_grain_runs_at_253_to_723_kPa_and_15_to_24_mm_per_second()
    {
        // A flat face, the nominal products (R 151.8 J/(kg K), gamma 1.141) at 1890 K: c* = 841 m/s. Worked out by hand from the closed form.
        GasConstants gas = BlackPowderProducts.Nominal.Equivalent().Constants;
        double c = ChamberBalance.CharacteristicVelocity(gas, 1890), face = Math.PI * 0.006 * 0.006;
        Assert.Equal(841.1, c, 0.1);
        double Kilopascals(BurnRateLaw law, double throat) => 1e-3 * ChamberBalance.ChokedPressure(
            1700, face, law.RateAtOneAtmosphere.MetersPerSecond, law.PressureExponent, c, Math.PI / 4 * throat * throat * 1e-6);
        Assert.Equal(253, Kilopascals(BurnRateLaw.Shidlovskiy, 3.5), 0.5);
        Assert.Equal(723, Kilopascals(BurnRateLaw.BelyaevMaznev, 2.6), 0.5);
        Assert.Equal(15.1, BurnRateLaw.Shidlovskiy.At(Pressure.FromKilopascals(253)).MillimetersPerSecond, 0.05);
        Assert.Equal(23.7, BurnRateLaw.BelyaevMaznev.At(Pressure.FromKilopascals(723)).MillimetersPerSecond, 0.05);
    }

    [Fact]
    public void A_spherical_face_is_a_disc_far_from_its_middle_and_a_half_sphere_near_it()
    {
        Assert.InRange(ChamberBalance.Face(10, 0.006) / (Math.PI * 0.006 * 0.006) - 1, 0, 1e-6);
        Assert.Equal(2 * Math.PI * 0.004 * 0.004, ChamberBalance.Face(0.004, 0.006), 1e-15);
        Assert.Equal(2 * Math.PI * 0.006 * 0.006, ChamberBalance.Face(0.006, 0.006), 1e-15);
    }

    [Fact]
    public void Volume_grows_by_the_face()
    {
        Assert.Equal(2 * Math.PI / 3 * Math.Pow(0.004, 3), ChamberBalance.Volume(0.004, 0.006), 1e-18);
        foreach (double burnt in (double[])[0.004, 0.0075, 0.02, 0.2])
        {
            const double step = 1e-6;
            double slope = (ChamberBalance.Volume(burnt + step, 0.006) - ChamberBalance.Volume(burnt - step, 0.006)) / (2 * step);
            Assert.InRange(slope / ChamberBalance.Face(burnt, 0.006) - 1, -1e-6, 1e-6);
        }
    }

    private static readonly BurnRateLaw[] Laws = [BurnRateLaw.Shidlovskiy, BurnRateLaw.BelyaevMaznev];

    private static GapSource.EndBurner Motor(double throat, BurnRateLaw law) =>
        Grains.Whole with { NozzleThroatDiameter = Length.FromMillimeters(throat), Rate = law };
}
