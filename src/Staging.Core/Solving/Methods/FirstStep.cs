namespace Staging.Core.Solving;

/// <summary>The size of the first step of a phase, from the sizes of state, slope and curvature.</summary>
internal static class FirstStep
{
    private const double Cautious = 1e-3;
    private const double ProbeShare = 0.01;
    private const double AimedError = 0.01;
    private const double FewSpacings = 16;
    private const double FewRoundings = 16 * 2.2204460492503131e-16;

    /// <summary>
    /// Estimates a first step [s] with one evaluation of the right-hand side, not beyond the stop time.
    /// </summary>
    /// <remarks>
    /// After E. Hairer, S. P. Norsett and G. Wanner, Solving Ordinary Differential Equations I, 2nd ed. (1993), section
    /// II.4, "Starting step size", rewritten so that the unit of time does not matter: the time over which the state
    /// changes by its own size, T = min(d0/d1, sqrt(d0/d2)), is taken from the scaled norms of state, slope and
    /// curvature, and (h/T)^p d0 is set to one hundredth. The result may exceed what remains: it is a property of the
    /// solution, and the next phase may use it. The probe is explicit: of a stiff system it may tell next to nothing,
    /// so the result is never so small that an integrator would not try it.
    /// </remarks>
    /// <param name="system">The right-hand side.</param>
    /// <param name="scale">The tolerances.</param>
    /// <param name="order">Order p of the method.</param>
    /// <param name="t">Time [s].</param>
    /// <param name="y">State.</param>
    /// <param name="slope">Slope f(t, y).</param>
    /// <param name="stop">Stop time of the phase [s].</param>
    /// <param name="longest">Longest step allowed [s].</param>
    /// <param name="probe">Work memory, as long as the state.</param>
    /// <param name="probeSlope">Work memory, as long as the state.</param>
    public static double Estimate<TSystem>(
        ref TSystem system,
        ErrorScale scale,
        int order,
        double t,
        ReadOnlySpan<double> y,
        ReadOnlySpan<double> slope,
        double stop,
        double longest,
        Span<double> probe,
        Span<double> probeSlope)
        where TSystem : IOdeSystem
    {
        double d0 = scale.Size(y);
        double d1 = scale.Norm(slope, y);
        double remaining = stop - t;
        double h = Math.Min(Math.Min(ProbeShare * d0 / d1, longest), remaining);
        double spacing = Math.BitIncrement(Math.Abs(t)) - Math.Abs(t);
        h = Math.Max(h, Math.Min(remaining, FewSpacings * spacing));
        for (int i = 0; i < y.Length; i++)
            probe[i] = y[i] + h * slope[i];
        system.Derivative(Math.Min(t + h, stop), probe, probeSlope);
        double d2 = scale.Distance(probeSlope, slope, y) / h;
        if (!double.IsFinite(d2))
            return Cautious * h;
        double least = FewRoundings * Math.Max(Math.Abs(t), Math.Min(remaining, longest));
        double naturalTime = Math.Min(d0 / d1, Math.Sqrt(d0 / d2));
        return double.IsFinite(naturalTime)
            ? Math.Clamp(naturalTime * Math.Pow(AimedError / d0, 1.0 / order), Math.Min(least, longest), longest)
            : Cautious * Math.Min(longest, remaining);
    }
}
