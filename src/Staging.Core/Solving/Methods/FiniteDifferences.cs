namespace Staging.Core.Solving;

/// <summary>Derivatives of a right-hand side by one-sided differences, for systems without a Jacobian.</summary>
internal static class FiniteDifferences
{
    /// <summary>
    /// Square root of the unit round-off: the relative increment at which rounding and curvature errors are of the same
    /// size.
    /// </summary>
    private const double RootRoundOff = 1.4901161193847656e-8;

    /// <summary>
    /// Increment in time as a share of the step. Of the two errors it makes in df/dt, relative to the slope over the
    /// step, rounding is 1e-16 over it, and curvature is it times the square of step over time scale, which is far
    /// below one in an accurate step.
    /// </summary>
    private const double ShareOfStep = 1e-6;

    /// <summary>Least increment in time, in spacings of representable times.</summary>
    private const double MinSpacings = 64;

    /// <summary>Writes df/dy row by row, with one evaluation a state, or two where the first is not finite.</summary>
    /// <remarks>
    /// Each state is moved in the direction of its slope, by its own size or its natural scale, whichever is larger,
    /// times the root of the round-off.
    /// </remarks>
    public static void ByState<TSystem>(
        ref TSystem system,
        double t,
        ReadOnlySpan<double> y,
        ReadOnlySpan<double> slope,
        ReadOnlySpan<double> scales,
        Span<double> moved,
        Span<double> movedSlope,
        Span<double> jacobian,
        ref SolverWork work)
        where TSystem : IOdeSystem
    {
        int n = y.Length;
        y.CopyTo(moved);
        for (int j = 0; j < n; j++)
        {
            double increment = Math.CopySign(RootRoundOff * Math.Max(Math.Abs(y[j]), scales[j]), slope[j]);
            for (int attempt = 0; attempt < 2; attempt++)
            {
                moved[j] = y[j] + increment;
                system.Derivative(t, moved, movedSlope);
                work = work with { DerivativeCalls = work.DerivativeCalls + 1 };
                if (ErrorScale.FirstNotFinite(movedSlope) < 0)
                    break;
                increment = -increment;
            }

            double difference = moved[j] - y[j];
            for (int i = 0; i < n; i++)
                jacobian[i * n + j] = (movedSlope[i] - slope[i]) / difference;
            moved[j] = y[j];
        }
    }

    /// <summary>
    /// Writes df/dt at fixed state, with one evaluation between <paramref name="t"/> and <paramref name="t"/> +
    /// <paramref name="h"/>.
    /// </summary>
    public static void ByTime<TSystem>(
        ref TSystem system, double t, double h, ReadOnlySpan<double> y, ReadOnlySpan<double> slope, Span<double> timeSlope,
        ref SolverWork work)
        where TSystem : IOdeSystem
    {
        double spacing = Math.BitIncrement(Math.Abs(t)) - Math.Abs(t);
        double later = t + Math.Min(h, Math.Max(ShareOfStep * h, MinSpacings * spacing));
        system.Derivative(later, y, timeSlope);
        work = work with { DerivativeCalls = work.DerivativeCalls + 1 };
        for (int i = 0; i < y.Length; i++)
            timeSlope[i] = (timeSlope[i] - slope[i]) / (later - t);
    }
}
