using Staging.Core.Fronts;
using UnitsNet;

namespace Staging.Core.Tests.Fronts;

public class FrontMixingTests
{
    private static readonly Length Bore = Length.FromMillimeters(18);

    [Fact]
    public void Thickness_is_that_of_diffusion_with_the_coefficient_of_dispersion()
    {
        // Far down a long tube: 10 to 90 % of an error function of variance 2 K t, with t = x/U for any U.
        foreach (double U in (double[])[3, 80])
        {
            double K = FrontMixing.Judged.DispersionAt(Bore, Speed.FromMetersPerSecond(U)).SquareMetersPerSecond;
            const double x = 40, z90 = 1.2815515655446004;
            double expected = 2 * z90 * Math.Sqrt(2 * K * x / U);
            Assert.Equal(expected, FrontMixing.Judged.ThicknessAfter(Length.FromMeters(x), Bore).Meters, 1e-12 * expected);
        }
    }

    [Theory]
    [InlineData(0.08, 0.1)]
    [InlineData(0.02, 0.05)]
    public void Dispersion_is_ten_radii_times_the_friction_speed(double f, double frictionSpeedOverMean)
    {
        // K = 10.1 a u* with u* = U sqrt(f/8): the root of 0.01 is 0.1, that of 0.0025 is 0.05.
        FrontMixing mixing = FrontMixing.Judged with { FrictionFactor = f };
        Assert.Equal(10.1 * 0.009 * 20 * frictionSpeedOverMean, mixing.DispersionAt(Bore, Speed.FromMetersPerSecond(20)).SquareMetersPerSecond, 1e-14);
    }

    [Fact]
    public void Both_bounds_agree_where_dispersion_takes_over()
    {
        double x = FrontMixing.Judged.DispersionTakesOverAt(Bore).Meters;
        double at = FrontMixing.Judged.ThicknessAfter(Length.FromMeters(x), Bore).Meters;
        Assert.Equal(11.0 / 49 * x, at, 1e-12 * at);
        Assert.Equal(11.0 / 49 * 0.5 * x, FrontMixing.Judged.ThicknessAfter(Length.FromMeters(0.5 * x), Bore).Meters, 1e-12);
        Assert.Equal(Math.Sqrt(2) * at, FrontMixing.Judged.ThicknessAfter(Length.FromMeters(2 * x), Bore).Meters, 1e-12);
    }

    [Fact]
    public void Light_gas_that_pushes_heavy_mixes_over_a_share_of_the_way()
    {
        double atwood = FrontMixing.Atwood(Density.FromKilogramsPerCubicMeter(1.2), Density.FromKilogramsPerCubicMeter(0.3));
        Assert.Equal(0.6, atwood, 1e-12);
        Assert.Equal(2 * 0.06 * 0.6 * 0.1, FrontMixing.AccelerationDepth(Length.FromMeters(0.1), atwood, 0.06).Meters, 1e-15);
        Assert.Equal(0, FrontMixing.AccelerationDepth(Length.FromMeters(0.1), -atwood, 0.06).Meters);
    }
}
