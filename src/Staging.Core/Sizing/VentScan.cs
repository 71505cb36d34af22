using System.Collections.Immutable;

namespace Staging.Core.Sizing;

/// <summary>
/// Tries total vent areas and refines the edges between those that light and those that do not. A run that was not
/// solved is neither: it bounds an interval without being searched.
/// </summary>
internal sealed class VentScan
{
    /// <summary>
    /// Ratio of neighbouring areas in the first scan [-]. An interval narrower than that may be missed.
    /// </summary>
    private const double ScanRatio = 1.35;

    /// <summary>Smallest total area tried [m2], 0.5 mm2: a pinhole that vents nothing within milliseconds.</summary>
    private const double Pinhole = 0.5e-6;

    /// <summary>Ratio of areas at which an edge of an interval counts as found [-].</summary>
    private const double EdgeRatio = 1.01;

    private readonly Func<double, VentTrial> trial;
    private readonly List<double> notSolved = [];

    /// <summary>Runs the scan.</summary>
    /// <param name="range">The areas that can be drilled.</param>
    /// <param name="trial">Runs the gap with a total area [m2].</param>
    public VentScan(VentRange range, Func<double, VentTrial> trial)
    {
        (Range, this.trial) = (range, trial);
        double largest = range.Largest.Area, smallest = Math.Max(range.Smallest.Area, Math.Min(Pinhole, 0.5 * largest));
        int points = (int)Math.Ceiling(Math.Log(largest / smallest) / Math.Log(ScanRatio)) + 1;
        double step = Math.Pow(largest / smallest, 1.0 / (points - 1));
        Trials = [.. Enumerable.Range(0, points).Select(i => Try(i == points - 1 ? largest : smallest * Math.Pow(step, i)))];
        Windows = [.. Found()];
    }

    /// <summary>The areas that can be drilled.</summary>
    public VentRange Range { get; }

    /// <summary>Every area of the scan, smallest first.</summary>
    public ImmutableArray<VentTrial> Trials { get; }

    /// <summary>The intervals that light, smallest first.</summary>
    public ImmutableArray<VentWindow> Windows { get; }

    /// <summary>Areas whose run was not solved, in the scan and at the edges [m2].</summary>
    public IReadOnlyList<double> NotSolved => notSolved;

    private VentTrial Try(double area)
    {
        VentTrial tried = trial(area);
        if (tried.Lights is null)
            notSolved.Add(area);
        return tried;
    }

    private IEnumerable<VentWindow> Found()
    {
        for (int i = 0; i < Trials.Length; i++)
        {
            if (Trials[i].Lights is not true)
                continue;
            int last = i;
            while (last + 1 < Trials.Length && Trials[last + 1].Lights is true)
                last++;
            bool reachesEnd = last == Trials.Length - 1;
            double min = i > 0 ? Edge(Trials[i - 1], Trials[i]) : Trials[i].TotalArea.SquareMeters;
            double max = reachesEnd ? Trials[last].TotalArea.SquareMeters : Edge(Trials[last + 1], Trials[last]);
            yield return new VentWindow(min, max, reachesEnd);
            i = last;
        }
    }

    /// <summary>
    /// Bisects, in the logarithm, between an area that stays dark and one that lights, as long as the runs are solved;
    /// returns the lit side.
    /// </summary>
    private double Edge(VentTrial outside, VentTrial inside)
    {
        double dark = outside.TotalArea.SquareMeters, lit = inside.TotalArea.SquareMeters;
        bool? answer = outside.Lights;
        while (answer is not null && Math.Max(dark, lit) / Math.Min(dark, lit) > EdgeRatio)
        {
            double middle = Math.Sqrt(dark * lit);
            answer = Try(middle).Lights;
            if (answer is true)
                lit = middle;
            else
                dark = middle;
        }

        return lit;
    }
}
