using Staging.Core.Solving;

namespace Staging.Core.Flight;

/// <summary>
/// Follows a descent with fixed drag area to the ground by quadrature, where the steps of an explicit method would be
/// limited by stability. The motion is linear in w = v^2, so w is the settled solution plus a residue that decays
/// exactly as exp(-integral of 2 k dh), whatever its size; time is the integral of dh/sqrt(w). Recorded as polynomials
/// like any other step.
/// </summary>
internal static class QuasiSteadyDescent
{
    /// <summary>
    /// Least share of the settled w above which the quadrature takes over [-]. Below it the integrand nears its
    /// singularity at rest; above the settled value there is no bound.
    /// </summary>
    public const double MinShare = 0.5;

    /// <summary>
    /// Share at which the full equation is stopped for the transition [-]: slightly more, because the air changes
    /// meanwhile.
    /// </summary>
    public const double AimedShare = 0.52;

    /// <summary>
    /// Tallest interval [m]: air changes by 3 % over it, so the quadrature is exact to round-off. Cells hold a whole
    /// number.
    /// </summary>
    private const double TallestInterval = 256;

    /// <summary>Height of an interval where the profile has a kink [m].</summary>
    private const double KinkInterval = 16;

    /// <summary>
    /// First interval of the residue and its longest, in heights 1/(2k) over which it falls by e [-], and how much
    /// longer each following interval is [-]. With a residue of at least minus half the settled value the integrand
    /// 1/sqrt(1 + r exp(-y)) is singular no nearer than y = -ln 2 on the real axis and y = ln r +- i pi off it: these
    /// intervals keep six Gauss points below 1e-10 (P. J. Davis and P. Rabinowitz, Methods of Numerical Integration,
    /// 1984, section 4.6).
    /// </summary>
    private const double FirstInterval = 0.4, LongestInterval = 2.5, Growth = 1.3;

    /// <summary>
    /// Residue over the settled value from which it enters the time to first order only [-]: what is left out is its
    /// square.
    /// </summary>
    private const double SmallResidue = 1e-6;

    /// <summary>
    /// Six-point Gauss-Legendre rule on [-1, 1] (M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions,
    /// 1964, table 25.4).
    /// </summary>
    private static ReadOnlySpan<double> Nodes =>
        [-0.9324695142031521, -0.6612093864662645, -0.2386191860831969, 0.2386191860831969, 0.6612093864662645, 0.9324695142031521];

    private static ReadOnlySpan<double> Weights =>
        [0.1713244923791704, 0.3607615730481386, 0.4679139345726910, 0.4679139345726910, 0.3607615730481386, 0.1713244923791704];

    /// <summary>Descends to height zero; the trajectory goes to the sink, if there is one.</summary>
    /// <returns>Time and velocity at the ground, and the number of evaluations of the settled speed.</returns>
    public static (double Time, double Velocity, int Calls) ToGround(in DescentLaw law, double time, double height, double velocity,
        IStepObserver? sink)
    {
        Span<double> initial = stackalloc double[2];
        Span<double> coefficients = stackalloc double[2 * Tsitouras54.DenseDegree];
        SteadyDescent top = SteadyDescent.At(law, height);
        double residue = velocity * velocity - top.SpeedSquared;
        double settling = FirstInterval, v = velocity;
        int calls = 1;
        for (double from = height, to; from > 0; from = to)
        {
            bool settled = Math.Abs(residue) <= SmallResidue * top.SpeedSquared;
            to = settled ? NextLevel(law, from) : Math.Max(0, from - settling / top.TwoK);
            settling = Math.Min(settling * Growth, LongestInterval);
            SteadyDescent end = SteadyDescent.At(law, to);
            var between = new DescentSegment(top, end, from - to);
            double leftOver = residue * between.Decay(from - to);
            double duration = settled
                ? Settled(law, from, to) - 0.5 * (residue - leftOver) / (top.TwoK * top.SpeedSquared * Math.Sqrt(top.SpeedSquared))
                : Settling(between, residue, from - to);
            double vEnd = -Math.Sqrt(end.SpeedSquared + leftOver);
            calls += settled ? Nodes.Length + 1 : 1;
            if (sink is not null)
            {
                if (settled)
                    SettledCourse(from, to, v, vEnd, law, duration, initial, coefficients);
                else
                    SettlingCourse(from, to, v, vEnd, top, end, duration, initial, coefficients);
                sink.Accept(time, duration, new DenseStep(time, duration, initial, coefficients));
            }

            time += duration;
            (v, top, residue) = (vEnd, end, leftOver);
        }

        return (time, v, calls);
    }

    /// <summary>Integral of dh/sqrt(w) over settled air.</summary>
    private static double Settled(in DescentLaw law, double from, double to)
    {
        double sum = 0;
        for (int j = 0; j < Nodes.Length; j++)
            sum += Weights[j] / Math.Sqrt(SteadyDescent.At(law, 0.5 * (from + to) + 0.5 * (from - to) * Nodes[j]).SpeedSquared);
        return 0.5 * (from - to) * sum;
    }

    /// <summary>
    /// The same while a residue decays, over an interval so short that cubics through its ends represent the settled
    /// value and the decay.
    /// </summary>
    private static double Settling(in DescentSegment between, double residue, double fall)
    {
        double sum = 0;
        for (int j = 0; j < Nodes.Length; j++)
        {
            double x = 0.5 * fall * (1 + Nodes[j]);
            sum += Weights[j] / Math.Sqrt(between.SpeedSquared(x) + residue * between.Decay(x));
        }

        return 0.5 * fall * sum;
    }

    /// <summary>
    /// The bottom of the interval below a height: the next multiple of the interval height, and never below the ground.
    /// </summary>
    private static double NextLevel(in DescentLaw law, double from)
    {
        double interval = law.Site.Cell(SiteColumn.CellOf(from - KinkInterval / 2)).Length == 0 ? KinkInterval : TallestInterval;
        double level = Math.Ceiling(from / interval - 1e-6) * interval - interval;
        return Math.Max(level, 0);
    }

    /// <summary>
    /// Through both ends: height by a quartic with both speeds and the first acceleration, velocity by a cubic with
    /// both accelerations. On the settled solution dv/dt = v dv/dh = w'/2, differenced over one metre: it affects
    /// only the record.
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

    /// <summary>
    /// The same with dv/dt = k v^2 - g, and velocity by a quartic with the first jerk, 2 k v dv/dt + k' v^3.
    /// </summary>
    private static void SettlingCourse(
        double h0, double h1, double v0, double v1, in SteadyDescent top, in SteadyDescent end, double T, Span<double> initial,
        Span<double> c)
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
