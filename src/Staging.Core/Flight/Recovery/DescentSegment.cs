namespace Staging.Core.Flight;

/// <summary>
/// The settled speed and the decay of a residue between two heights, by cubics through values and slopes at both ends.
/// The slope of the settled w is that of its equation, dw/dh = 2k w - 2g; the decay is exp(-integral of 2k dh).
/// </summary>
internal readonly struct DescentSegment
{
    private readonly double w0, w1, w2, w3;
    private readonly double k0, k1, k2, k3;

    /// <summary>The segment that begins at a height and falls by <paramref name="fall"/> [m].</summary>
    public DescentSegment(in SteadyDescent top, in SteadyDescent end, double fall)
    {
        (w0, w1, w2, w3) = Cubic(top.SpeedSquared, -Slope(top), end.SpeedSquared, -Slope(end), fall);
        (k0, k1, k2, k3) = Cubic(top.TwoK, -top.TwoKSlope, end.TwoK, -end.TwoKSlope, fall);
        (k1, k2, k3) = (k1 / 2, k2 / 3, k3 / 4);
    }

    /// <summary>Settled v^2 [m2/s2] after falling by x [m].</summary>
    public double SpeedSquared(double x) => w0 + x * (w1 + x * (w2 + x * w3));

    /// <summary>Remaining share of a residue after falling by x [m] [-].</summary>
    public double Decay(double x) => Math.Exp(-x * (k0 + x * (k1 + x * (k2 + x * k3))));

    private static double Slope(in SteadyDescent at) => at.TwoK * at.SpeedSquared - 2 * at.Gravity;

    /// <summary>Hermite's cubic in x through value and slope at 0 and at X.</summary>
    private static (double C0, double C1, double C2, double C3) Cubic(double f0, double s0, double f1, double s1, double X)
    {
        double chord = (f1 - f0) / X;
        return (f0, s0, (3 * chord - 2 * s0 - s1) / X, (s0 + s1 - 2 * chord) / (X * X));
    }
}
