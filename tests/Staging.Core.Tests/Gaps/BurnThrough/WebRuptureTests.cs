using Staging.Core.Gaps;

namespace Staging.Core.Tests.Gaps.BurnThrough;

/// <summary>Closed forms and limits of the broken web.</summary>
public class WebRuptureTests
{
    private const double R = 0.006, Rc = 0.045, Over = 4e5;

    [Theory]
    [InlineData(2e6, 0.75)]
    [InlineData(4e6, 1)]
    [InlineData(1e7, 1.24)]
    public void A_long_grain_breaks_off_whole_where_the_edge_is_beta_R_thick(double strength, double factor)
    {
        double beta = Math.Sqrt(factor * Over / strength);
        var web = new WebRupture(R, Rc, Over, strength, factor);
        Assert.True(web.IsWhole);
        Assert.Equal(R, web.Radius);
        Assert.Equal(beta * R, web.Edge, 1e-15);
        Assert.Equal(Math.PI * R * R * (beta * R - R * R / (4 * Rc)), web.Volume, 1e-18);
        Assert.Equal(web.Edge - R * R / (2 * Rc), web.Axis, 1e-15);
        Assert.Equal(strength, factor * Over * R * R / (web.Edge * web.Edge), 1e-6 * strength);
    }

    [Fact]
    public void A_short_grain_loses_a_cap_where_the_dome_touches_the_line_beta_s()
    {
        // The least h0 at which no circle has failed yet: found here by search over s, of h0 = max(beta s - s^2/(2 Rc)).
        const double strength = 4e7, factor = 0.9;
        double beta = Math.Sqrt(factor * Over / strength), axis = 0, at = 0;
        for (double s = 0; s <= R; s += R / 200_000)
        {
            double h0 = beta * s - s * s / (2 * Rc);
            if (h0 > axis)
                (axis, at) = (h0, s);
        }

        var web = new WebRupture(R, Rc, Over, strength, factor);
        Assert.False(web.IsWhole);
        Assert.Equal(at, web.Radius, 1e-7);
        Assert.Equal(axis, web.Axis, 1e-12);
        Assert.Equal(beta * beta * Rc / 2, web.Axis, 1e-15);
        Assert.Equal(beta * Rc, web.Radius, 1e-15);
    }

    [Fact]
    public void No_weaker_circle_is_left_in_the_whole_web()
    {
        var web = new WebRupture(R, Rc, Over, 3e6, 1);
        double beta = Math.Sqrt(Over / 3e6);
        for (double s = 0; s <= R; s += R / 1000)
            Assert.True(web.Axis + s * s / (2 * Rc) >= beta * s - 1e-15);
    }

    [Fact]
    public void Both_regimes_meet()
    {
        // beta Rc = R at sigma = k dp (Rc/R)^2.
        double strength = Over * Rc * Rc / (R * R);
        WebRupture whole = new(R, Rc, Over, strength * (1 - 1e-12), 1), cap = new(R, Rc, Over, strength * (1 + 1e-12), 1);
        Assert.True(whole.IsWhole);
        Assert.False(cap.IsWhole);
        Assert.InRange(cap.Radius / whole.Radius - 1, -1e-11, 1e-11);
        Assert.InRange(cap.Edge / whole.Edge - 1, -1e-11, 1e-11);
        Assert.InRange(cap.Axis / whole.Axis - 1, -1e-11, 1e-11);
        Assert.InRange(cap.Volume / whole.Volume - 1, -1e-11, 1e-11);
        Assert.InRange(new GrowingHole(R, Rc, Rc + cap.Axis, cap.Radius).Volume / cap.Volume, -1e-11, 1e-11);
    }

    [Fact]
    public void An_ever_stronger_web_ends_as_a_point()
    {
        foreach (double strength in (double[])[1e9, 1e11, 1e13])
        {
            var web = new WebRupture(R, Rc, Over, strength, 1);
            Assert.Equal(Over / strength * Rc / 2, web.Axis, 1e-9 * web.Axis);
            Assert.Equal(Rc * Math.Sqrt(Over / strength), web.Radius, 1e-9 * web.Radius);
        }
    }

    [Fact]
    public void Over_an_ever_longer_grain_it_is_a_flat_plate()
    {
        var web = new WebRupture(R, 1e6, Over, 3e6, 1);
        Assert.True(web.IsWhole);
        Assert.InRange(web.Axis / web.Edge - 1, -1e-7, 0);
        Assert.InRange(web.Volume / (Math.PI * R * R * web.Edge) - 1, -1e-7, 0);
    }

    [Fact]
    public void A_stronger_web_breaks_thinner_and_a_higher_pressure_thicker()
    {
        double last = double.PositiveInfinity, less = 0;
        for (double x = 1e5; x < 1e9; x *= 1.5)
        {
            double edge = new WebRupture(R, Rc, Over, x, 1).Edge, under = new WebRupture(R, Rc, 0.01 * x, 4e6, 1).Edge;
            Assert.True(edge < last && under > less);
            (last, less) = (edge, under);
        }
    }
}
