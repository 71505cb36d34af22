using Staging.Core.Gaps;
using Staging.Core.Solving;

namespace Staging.Core.Tests.Gaps.BurnThrough;

/// <summary>Closed forms of the ring that is left round a hole, and what it conserves.</summary>
public class GrowingHoleTests
{
    private const double R = 0.006;

    [Theory]
    [InlineData(0.045)]
    [InlineData(0.02)]
    [InlineData(0.004)]
    public void An_unbroken_dome_opens_by_its_closed_forms(double Rc)
    {
        var hole = new GrowingHole(R, Rc, Rc, 0);
        Assert.Equal(Math.Sqrt(Rc * Rc + R * R) - Rc, hole.End, 1e-15);
        for (double share = 0.01; share < 1; share += 0.07)
        {
            double b = share * hole.End, opened = hole.Opened<Real>(b) * R;
            double area = 2 * Math.PI * Rc * b * (1 + b / (2 * Rc));
            Assert.InRange(Math.PI * opened * opened / area - 1, -1e-10, 1e-10);
            double wall = Math.Sqrt(Math.Max(0, (Rc + b) * (Rc + b) - R * R));
            Assert.InRange(hole.Face<Real>(b).Value / (2 * Math.PI * (Rc + b) * (Rc - wall)) - 1, -1e-10, 1e-10);
        }

        Assert.Equal(1, hole.Opened<Real>(hole.End), 1e-12);
        Assert.Equal(0, hole.Opened<Real>(0));
        Assert.InRange((hole.Face<Real>(hole.End) / hole.Face<Real>(0)).Value, 0, 1e-10);
    }

    [Theory]
    [InlineData(0.045, 39)]
    [InlineData(0.02, 88)]
    public void Mass_left_when_an_unbroken_dome_first_touches(double Rc, double milligrams)
    {
        double closed = R * R * Rc - 2.0 / 3 * (Rc * Rc * Rc - Math.Pow(Rc * Rc - R * R, 1.5));
        double ours = new GrowingHole(R, Rc, Rc, 0).Volume;

        // The volume is a small difference of large ones.
        Assert.InRange(ours / (Math.PI * closed) - 1, -1e-10, 1e-10);
        Assert.Equal(milligrams, 1700 * ours * 1e6, 0.5);
    }

    [Theory]
    [InlineData(0.045, 0.0453, 0.004)]
    [InlineData(0.02, 0.02, 0)]
    [InlineData(0.012, 0.0124, 0.0035)]
    [InlineData(0.004, 0.0042, 0.0012)]
    public void What_burns_is_what_was_there(double Rc, double plane, double cap)
    {
        // The face over the growth is the volume. Its slope jumps where the sphere passes the rim of the cap (and where it meets the wall, in a grain wider
        // than the sphere), so the midpoint sum is taken between these points; each has a root at its end, and the sum converges with the power 1.5 or better.
        var hole = new GrowingHole(R, Rc, plane, cap);
        double[] kinks = [0, Math.Max(0, Math.Sqrt(plane * plane + cap * cap) - Rc), Math.Max(0, R - Rc), hole.End];
        Array.Sort(kinks);
        double coarse = Math.Abs(Sum(hole, kinks, 400) / hole.Volume - 1), fine = Math.Abs(Sum(hole, kinks, 4000) / hole.Volume - 1);
        Assert.InRange(fine, 0, 1e-6);
        Assert.True(fine < 1e-12 || fine < coarse / 25, $"{coarse:E2} fell to {fine:E2}");
    }

    [Fact]
    public void It_opens_from_the_cap_on_and_only_grows()
    {
        var hole = new GrowingHole(R, 0.045, 0.0453, 0.004);
        double last = 0;
        for (double share = 0; share <= 1.001; share += 0.01)
        {
            double opened = hole.Opened<Real>(share * hole.End);
            Assert.InRange(opened, last, 1);
            last = opened;
        }
    }

    private static double Sum(GrowingHole hole, double[] kinks, int steps)
    {
        double sum = 0;
        for (int k = 1; k < kinks.Length; k++)
        {
            double step = (kinks[k] - kinks[k - 1]) / steps;
            for (int i = 0; i < steps; i++)
                sum += hole.Face<Real>(kinks[k - 1] + (i + 0.5) * step) * step;
        }

        return sum;
    }
}
