using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// A table of a known flow, handed out step by step so that what has been given is what the table holds up to then.
/// </summary>
internal sealed class FeedHistory(FeedParameters feed, double heatCapacity)
{
    private GapTotals given;

    /// <summary>Mass and energy that the flow owes up to a time [s].</summary>
    public GapTotals Owed(double time)
    {
        GapTotals due = DueBy(time);
        return new GapTotals(Math.Max(0, due.Mass - given.Mass), Math.Max(0, due.Energy - given.Energy));
    }

    /// <summary>Enters what has been given.</summary>
    public void Give(GapTotals more) => given += more;

    /// <summary>
    /// What the table holds up to a time. Simpson's rule on each piece is exact: flow and temperature are straight
    /// lines.
    /// </summary>
    private GapTotals DueBy(double time)
    {
        double mass = 0, energy = 0;
        ReadOnlySpan<double> times = feed.Times;
        for (int piece = 0; piece + 1 < times.Length && times[piece] < time; piece++)
        {
            double from = times[piece], to = Math.Min(time, times[piece + 1]);
            (double m0, double T0) = feed.At<Real>(piece, from);
            (double m1, double T1) = feed.At<Real>(piece, 0.5 * (from + to));
            (double m2, double T2) = feed.At<Real>(piece, to);
            mass += (to - from) / 6 * (m0 + 4 * m1 + m2);
            energy += (to - from) / 6 * heatCapacity * (m0 * T0 + 4 * m1 * T1 + m2 * T2);
        }

        return new GapTotals(mass, energy);
    }
}
