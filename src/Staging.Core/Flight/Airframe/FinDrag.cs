namespace Staging.Core.Flight;

/// <summary>
/// Pressure drag of fins as a drag area [m2]. Leading edges: flat 0.85 of the stagnation pressure (S. F. Hoerner 1965),
/// round (1 - M^2)^-0.417 - 1 below Mach 0.9, 1 - 1.785 (M - 0.9) to 1 and 1.214 - 0.502/M^2 + 0.1095/M^4 above
/// (J. S. Barrowman 1967), each with the square of the cosine of sweep. Trailing edges, unless tapered: base suction
/// 0.12 + 0.13 M^2, above the speed of sound 0.25/M. Wave drag of a thin double wedge, 4 (t/c)^2/sqrt(M^2 - 1)
/// (J. Ackeret 1925), above Mach 1.2; behind a flat leading edge none, because the pressure on that edge includes
/// its shock. All from memory.
/// </summary>
internal static class FinDrag
{
    /// <summary>
    /// Least angle of the Mach cone relation, so that the thin-wing formula does not blow up at the speed of sound [-]:
    /// M = 1.2.
    /// </summary>
    private const double MinBeta = 0.6633;

    public static double Pressure(FinGroup fins, double M)
    {
        double span = fins.Span.Meters, t = fins.Thickness.Meters, chord = 0.5 * (fins.RootChord.Meters + fins.TipChord.Meters);
        double cosine = span / Math.Sqrt(span * span + fins.Sweep.Meters * fins.Sweep.Meters);
        double lead = fins.RoundLeadingEdge ? Round(M) : Flat(M);
        double trail = fins.TaperedTrailingEdge ? 0 : M < 1 ? 0.12 + 0.13 * M * M : 0.25 / M;
        double beta = Math.Max(MinBeta, Math.Sqrt(Math.Max(0, M * M - 1)));
        double wave = fins.RoundLeadingEdge ? TransonicBlend.Of(M, 0, 4 * (t / chord) * (t / chord) / beta) : 0;
        return fins.Count * (span * t * (lead * cosine * cosine + trail) + fins.PlanformArea.SquareMeters * wave);
    }

    /// <summary>
    /// 0.85 of the pressure coefficient at a stagnation point, behind a normal shock above the speed of sound.
    /// </summary>
    private static double Flat(double M)
    {
        double m2 = M * M;
        return 0.85 * (M < 1 ? 1 + m2 / 4 + m2 * m2 / 40 : 1.84 - 0.76 / m2 + 0.166 / (m2 * m2) + 0.035 / (m2 * m2 * m2));
    }

    private static double Round(double M) => M < 0.9
        ? Math.Pow(1 - M * M, -0.417) - 1
        : M < 1 ? 1 - 1.785 * (M - 0.9) : 1.214 - 0.502 / (M * M) + 0.1095 / (M * M * M * M);
}
