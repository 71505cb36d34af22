using Staging.Core.Solving;

namespace Staging.Core.Flight;

/// <summary>
/// Follows a descent with fixed drag area to the ground by quadrature, where an explicit method would creep with steps bound by stability. The
/// motion is linear in w = v^2, so w is the settled solution plus a residue that dies out exactly as exp(-integral of 2 k dh), whatever its
/// size; time is the integral of dh/sqrt(w). Recorded as polynomials like any other step.
/// </summary>
internal static class QuasiSteadyDescent
{
    /// <summary>
    /// Least share of the settled w at which the full equation hands over [-]. Below it the integrand nears its singularity at rest; above the settled
    /// value there is no bound.
    /// </summary>
    public const double LeastShare = 0.5;

    /// <summary>Tallest piece [m]: air changes by 3 % over it, so the quadrature is exact to round-off. Cells hold a whole number.</summary>
    private const double TallestPiece = 256;

    /// <summary>Height of a piece where the profile has a kink [m].</summary>
    private const double KinkPiece = 16;

    /// <summary>First piece of the residue, in heights 1/(2k) over which it falls by e [-], and how much longer each following piece is [-].</summary>
    private const double FirstPiece = 0.4, Growth = 1.3;

    /// <summary>Residue over the settled value that is no longer followed [-].</summary>
    private const double NoResidue = 1e-12;

    /// <summary>Six-point Gauss-Legendre rule on [-1, 1] (M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964, table 25.4).</summary>
    private static ReadOnlySpan<double> Nodes =>
        [-0.9324695142031521, -0.6612093864662645, -0.2386191860831969, 0.2386191860831969, 0.6612093864662645, 0.9324695142031521];

    private static ReadOnlySpan<double> Weights =>
        [0.1713244923791704, 0.3607615730481386, 0.4679139345726910, 0.4679139345726910, 0.3607615730481386, 0.1713244923791704];

    /// <summary>Descends to height zero.</summary>
    /// <returns>Time and velocity at the ground, and the number of evaluations of the settled speed.</returns>
    public static (double Time, double Velocity, int Calls) ToGround(in DescentLaw law, double time, double height, double velocity, IStepSink sink)
    {
        Span<double> initial = stackalloc double[2];
        Span<double> coefficients = stackalloc double[2 * Tsitouras54.DenseDegree];
        SteadyDescent start = SteadyDescent.At(law, height);
        double residue = velocity * velocity - start.SpeedSquared;
        double settling = FirstPiece;
        double v = velocity;
        int calls = 1;
        for (double from = height, to; from > 0; from = to)
        {
            SteadyDescent top = SteadyDescent.At(law, from);
            bool settled = Math.Abs(residue) <= NoResidue * top.SpeedSquared;
            to = settled ? NextLevel(law, from) : Math.Max(0, from - settling / top.TwoK);
            settling *= Growth;
            if (settled)
                residue = 0;
            double sum = 0;
            for (int j = 0; j < Nodes.Length; j++)
            {
                double h = 0.5 * (from + to) + 0.5 * (from - to) * Nodes[j];
                SteadyDescent at = SteadyDescent.At(law, h);
                sum += Weights[j] / Math.Sqrt(at.SpeedSquared + Left(residue, top, at, from - h));
            }

            SteadyDescent end = SteadyDescent.At(law, to);
            residue = Left(residue, top, end, from - to);
            double duration = 0.5 * (from - to) * sum;
            double vEnd = -Math.Sqrt(end.SpeedSquared + residue);
            if (settled)
                SettledCourse(from, to, v, vEnd, law, duration, initial, coefficients);
            else
                SettlingCourse(from, to, v, vEnd, top, end, duration, initial, coefficients);
            calls += Nodes.Length + 2;
            sink.Accept(time, duration, new DenseStep(time, duration, initial, coefficients));
            time += duration;
            v = vEnd;
        }

        return (time, v, calls);
    }

    /// <summary>The residue after a fall: exp of minus the integral of 2k dh, by the trapezoidal rule with its correction by slopes.</summary>
    private static double Left(double residue, in SteadyDescent from, in SteadyDescent to, double fall) =>
        residue == 0 ? 0 : residue * Math.Exp(-0.5 * (from.TwoK + to.TwoK) * fall + (from.TwoKSlope - to.TwoKSlope) * fall * fall / 12);

    /// <summary>The bottom of the piece below a height: the next multiple of the piece height, and never below the ground.</summary>
    private static double NextLevel(in DescentLaw law, double from)
    {
        double piece = law.Air.Cell(AirColumn.CellOf(from - KinkPiece / 2)).Length == 0 ? KinkPiece : TallestPiece;
        double level = Math.Ceiling(from / piece - 1e-6) * piece - piece;
        return Math.Max(level, 0);
    }

    /// <summary>
    /// Through both ends: height by a quartic with both speeds and the first acceleration, velocity by a cubic with both accelerations. On the settled
    /// solution dv/dt = v dv/dh = w'/2, differenced over one metre: it shapes the record, nothing else.
    /// </summary>
    private static void SettledCourse(
        double h0, double h1, double v0, double v1, in DescentLaw law, double T, Span<double> initial, Span<double> c)
    {
        double a0 = SettledAcceleration(law, h0), a1 = SettledAcceleration(law, h1);
        Height(h0, h1, v0, v1, a0, T, initial, c);
        initial[1] = v0;
        c[1] = a0 * T;
        double dv = v1 - v0 - c[1];
        c[5] = (a1 - a0) * T - 2 * dv;
        c[3] = dv - c[5];
        c[7] = 0;
    }

    private static double SettledAcceleration(in DescentLaw law, double h) =>
        0.5 * (SteadyDescent.At(law, h + 0.5).SpeedSquared - SteadyDescent.At(law, h - 0.5).SpeedSquared);

    /// <summary>The same with dv/dt = k v^2 - g, and velocity by a quartic with the first jerk, 2 k v dv/dt + k' v^3.</summary>
    private static void SettlingCourse(
        double h0, double h1, double v0, double v1, in SteadyDescent top, in SteadyDescent end, double T, Span<double> initial, Span<double> c)
    {
        double a0 = 0.5 * top.TwoK * v0 * v0 - top.Gravity, a1 = 0.5 * end.TwoK * v1 * v1 - end.Gravity;
        double jerk = top.TwoK * v0 * a0 + 0.5 * top.TwoKSlope * v0 * v0 * v0;
        Height(h0, h1, v0, v1, a0, T, initial, c);
        initial[1] = v0;
        c[1] = a0 * T;
        c[3] = 0.5 * jerk * T * T;
        double rest = v1 - v0 - c[1] - c[3], restSlope = a1 * T - c[1] - 2 * c[3];
        c[7] = restSlope - 3 * rest;
        c[5] = rest - c[7];
    }

    private static void Height(double h0, double h1, double v0, double v1, double a0, double T, Span<double> initial, Span<double> c)
    {
        initial[0] = h0;
        c[0] = v0 * T;
        c[2] = 0.5 * a0 * T * T;
        double rest = h1 - h0 - c[0] - c[2], restSlope = v1 * T - c[0] - 2 * c[2];
        c[6] = restSlope - 3 * rest;
        c[4] = rest - c[6];
    }
}
