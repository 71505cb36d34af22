using Staging.Core.Solving;

namespace Staging.Core.Flight;

/// <summary>
/// Follows a settled descent to the ground by quadrature, t = integral of dh/|v(h)|, where an explicit method would creep with steps
/// bound by stability. Recorded as polynomials like any other step.
/// </summary>
internal static class QuasiSteadyDescent
{
    /// <summary>
    /// Relative deviation of v^2 from the settled solution at which the full equation hands over [-]. What is left of the deviation dies
    /// out over a height 1/(2k); its effect on the time is counted in to first order, so the error is its square.
    /// </summary>
    public const double Joint = 2e-5;

    /// <summary>Tallest piece [m]: air changes by 3 % over it, so four-point quadrature is exact to round-off. Cells hold a whole number.</summary>
    private const double TallestPiece = 256;

    /// <summary>Height of a piece where the profile has a kink [m].</summary>
    private const double KinkPiece = 16;

    /// <summary>Four-point Gauss-Legendre rule on [-1, 1] (M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964, table 25.4).</summary>
    private static ReadOnlySpan<double> Nodes => [-0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526];

    private static ReadOnlySpan<double> Weights => [0.3478548451374538, 0.6521451548625461, 0.6521451548625461, 0.3478548451374538];

    /// <summary>Descends from a state near the settled one to height zero.</summary>
    /// <returns>Time and velocity at the ground, and the number of evaluations of the settled speed.</returns>
    public static (double Time, double Velocity, int Calls) ToGround(in DescentLaw law, double time, double height, double velocity, IStepSink sink)
    {
        double v = Velocity(law, height);
        double q = 1 / (1 + (height + law.Air.SiteElevation) / law.EarthRadius);
        // A residue v - vs decays at the rate 2 g/|v|, so it ends as a shift of height (v - vs) |v|/(2 g).
        double top = height + (velocity - v) * -v / (2 * law.SeaLevelGravity * q * q);
        int calls = 2;
        Span<double> initial = stackalloc double[2];
        Span<double> coefficients = stackalloc double[8];
        v = Velocity(law, top);
        for (double from = top, to; from > 0; from = to)
        {
            to = NextLevel(law, from);
            double sum = 0;
            for (int j = 0; j < Nodes.Length; j++)
                sum -= Weights[j] / Velocity(law, 0.5 * (from + to) + 0.5 * (from - to) * Nodes[j]);
            double duration = 0.5 * (from - to) * sum;
            double vEnd = Velocity(law, to);
            Hermite(from, to, v, vEnd, Acceleration(law, from), Acceleration(law, to), duration, initial, coefficients);
            calls += Nodes.Length + 1 + 4;
            sink.Accept(time, duration, new DenseStep(time, duration, initial, coefficients));
            time += duration;
            v = vEnd;
        }

        return (time, v, calls);
    }

    /// <summary>The bottom of the piece below a height: the next multiple of the piece height, and never below the ground.</summary>
    private static double NextLevel(in DescentLaw law, double from)
    {
        double piece = law.Air.Cell(AirColumn.CellOf(from - KinkPiece / 2)).Length == 0 ? KinkPiece : TallestPiece;
        double level = Math.Ceiling(from / piece - 1e-6) * piece - piece;
        return Math.Max(level, 0);
    }

    private static double Velocity(in DescentLaw law, double h) => -Math.Sqrt(SteadyDescent.At(law, h).SpeedSquared);

    /// <summary>dv/dt = v dv/dh = w'/2 on the settled solution, by a central difference over one metre: it shapes the record, nothing else.</summary>
    private static double Acceleration(in DescentLaw law, double h) =>
        0.5 * (SteadyDescent.At(law, h + 0.5).SpeedSquared - SteadyDescent.At(law, h - 0.5).SpeedSquared);

    private static void Hermite(
        double h0, double h1, double v0, double v1, double a0, double a1, double T, Span<double> initial, Span<double> c)
    {
        initial[0] = h0;
        initial[1] = v0;
        // Height: a quartic through both heights and speeds and the first acceleration.
        double dh = h1 - h0;
        c[0] = v0 * T;
        c[2] = 0.5 * a0 * T * T;
        double rest = dh - c[0] - c[2], restSlope = v1 * T - c[0] - 2 * c[2];
        c[6] = restSlope - 3 * rest;
        c[4] = rest - c[6];
        // Velocity: a cubic through both speeds and accelerations.
        c[1] = a0 * T;
        double dv = v1 - v0 - c[1];
        c[5] = (a1 - a0) * T - 2 * dv;
        c[3] = dv - c[5];
        c[7] = 0;
    }
}
