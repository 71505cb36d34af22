using Staging.Core.Gaps.OneDimensional;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>What the slopes of the resolved tube take for a jump, what for a shock, and that no slope overshoots.</summary>
public class SlopeLimiterTests
{
    private const double Carried = 1, NotCarried = -1;

    [Fact]
    public void Slopes_stay_between_zero_and_twice_the_smaller_difference()
    {
        for (double a = -2; a <= 2; a += 0.25)
        {
            for (double b = -2; b <= 2; b += 0.25)
            {
                double most = a * b > 0 ? 2 * Math.Min(Math.Abs(a), Math.Abs(b)) : 0;
                foreach (double slope in (double[])[Smooth(a, b), Slope(0, a, b, 0, Carried), Slope(0, a, b, 0, NotCarried)])
                {
                    Assert.InRange(Math.Abs(slope), 0, most);
                    Assert.True(slope * a >= 0, "a slope has the sign of the differences");
                }
            }
        }
    }

    [Fact]
    public void A_jump_that_the_gas_carries_gets_the_steeper_slope()
    {
        // A contact over three cells: differences 0.1, 0.5, 0.4, 0.
        Assert.Equal(0.6, Slope(0.1, 0.5, 0.4, 0, Carried), 1e-12);
        Assert.Equal(Smooth(0.5, 0.4), Slope(0.1, 0.5, 0.4, 0, NotCarried));
    }

    [Theory]
    [InlineData(100)]
    [InlineData(1000)]
    public void Nothing_smooth_is_a_jump_on_a_fine_grid(int cells)
    {
        // A sine with extremum and inflection: whatever it is, it keeps the slope of smooth flow.
        double Difference(int i) => Math.Sin(2 * Math.PI * (i + 1) / cells) - Math.Sin(2 * Math.PI * i / cells);
        Assert.All(Enumerable.Range(0, cells), i =>
        {
            double a = Difference(i), b = Difference(i + 1);
            Assert.Equal(Smooth(a, b), Slope(Difference(i - 1), a, b, Difference(i + 2), Carried));
        });
    }

    [Theory]
    [InlineData(1.14)]
    [InlineData(1.4)]
    public void Density_jumps_at_a_contact_and_in_no_wave_of_sound(double gamma)
    {
        Assert.True(DensityJump(1, 1, 0.5, 0) > 0);
        Assert.False(DensityJump(1, 1, 0.1, 0) > 0);
        for (double change = -0.9; change < 1; change += 0.1)
            Assert.False(DensityJump(1, 1, change, Math.Pow(1 + change / 2, gamma) - Math.Pow(1 - change / 2, gamma)) > 0);
    }

    [Fact]
    public void A_shock_is_a_strong_rise_of_pressure_that_stops_the_gas()
    {
        Assert.True(Shock(1, 1.4, 0.1) > 0);
        Assert.True(Shock(1.4, 1, 0.1) > 0);
        Assert.False(Shock(1, 1.3, 0.1) > 0);
        Assert.False(Shock(1, 1.4, -0.1) > 0);
        Assert.False(Shock(1, 1.4, 0) > 0);
    }

    private static double Smooth(double a, double b) => SlopeLimiter<Lane1>.Smooth(new(a), new(b)).Value;

    private static double Slope(double before, double a, double b, double after, double carried) =>
        SlopeLimiter<Lane1>.Carried(new(before), new(a), new(b), new(after), new(carried)).Value;

    private static double DensityJump(double density, double pressure, double change, double pressureChange) =>
        SlopeLimiter<Lane1>.DensityJump(new(density), new(pressure), new(change), new(pressureChange)).Value;

    private static double Shock(double left, double right, double stopped) => SlopeLimiter<Lane1>.Shock(new(left), new(right), new(stopped)).Value;
}
