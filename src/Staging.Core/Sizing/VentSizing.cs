using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>Puts a vent area into a gap, and finds the areas that light the upper motor.</summary>
public static class VentSizing
{
    /// <summary>
    /// Ratio of neighbouring areas in the first scan [-]. An interval narrower than that may be missed.
    /// </summary>
    private const double ScanRatio = 1.35;

    /// <summary>Smallest total area tried [m2], 0.5 mm2: a pinhole that vents nothing within milliseconds.</summary>
    private const double SmallestArea = 0.5e-6;

    /// <summary>Ratio of areas at which an edge of an interval counts as found [-].</summary>
    private const double EdgeRatio = 1.01;

    /// <summary>
    /// The gap with another vent area: the same total area in the guide tube and in every jacket on the way out, since
    /// holes in one of two nested walls vent little.
    /// </summary>
    /// <remarks>
    /// The vents of the problem are replaced; of them only the place where the uppermost leads is kept. A jacket keeps
    /// the number and the places of its holes. A gap with jackets and without vents is taken to vent into the first of
    /// them.
    /// </remarks>
    /// <param name="problem">The gap.</param>
    /// <param name="layout">How the area is drilled in the tube.</param>
    /// <param name="total">Total area of the holes in each wall.</param>
    /// <returns>A changed copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">One hole would be smaller than 0.1 mm or larger than 100 mm, or
    /// lie outside the tube.</exception>
    public static GapProblem WithVents(this GapProblem problem, VentLayout layout, Area total)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(layout);
        return problem with { Design = VentPath.Vented(problem.Design, layout, total) };
    }

    /// <summary>
    /// Tries total vent areas in place of the vents of the problem, from a pinhole to a side wide open, and refines the
    /// edges. Where the vents lead into a jacket, every wall on the way out is given the same total area.
    /// </summary>
    /// <param name="problem">The gap; of its own vents only the place they lead to is used, of its jackets all but the
    /// size of the holes.</param>
    /// <param name="layout">How the area is drilled.</param>
    /// <param name="model">How the gas is modelled; null for the displacement model.</param>
    /// <param name="options">How to integrate; null for the defaults.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>The advice; it says so when no area lights.</returns>
    /// <exception cref="InvalidModelException">The problem is in error with every area.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static VentAdvice SizeVents(
        this GapProblem problem, VentLayout layout, GapModel? model = null, SolverOptions? options = null,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(layout);
        VentTrial Try(double area)
        {
            Area total = Area.FromSquareMeters(area);
            GapRun run = problem.WithVents(layout, total).Solve(model, options, cancellationToken: cancellationToken);
            return new VentTrial(total, run.Outcome, run.PeakGaugePressure, run.PeakGrainSurface);
        }

        GuideTube tube = problem.Design.Tube;
        double largest = Math.Max(layout.LargestOpening(tube).SquareMeters, 2 * SmallestArea);
        int points = (int)Math.Ceiling(Math.Log(largest / SmallestArea) / Math.Log(ScanRatio)) + 1;
        double step = Math.Pow(largest / SmallestArea, 1.0 / (points - 1));
        ImmutableArray<VentTrial> trials = [.. Enumerable.Range(0, points)
            .Select(i => Try(i == points - 1 ? largest : SmallestArea * Math.Pow(step, i)))];
        ImmutableArray<VentWindow> windows = [.. Windows(trials, Try)];
        VentWindow? widest = windows.MaxBy(w => w.FactorToEdges);
        Area ring = layout.LargestRing(tube);
        Area? asked = widest is null ? null : widest.MiddleUpTo(ring);
        return new VentAdvice
        {
            Layout = layout,
            Trials = trials,
            Windows = windows,
            Recommended = asked,
            Holes = asked is { } area ? layout.PatternOf(tube, area) : null,
            Reason = widest is null ? WhyNone(trials) : Why(widest, asked!.Value, ring),
        };
    }

    private static IEnumerable<VentWindow> Windows(ImmutableArray<VentTrial> trials, Func<double, VentTrial> trial)
    {
        for (int i = 0; i < trials.Length; i++)
        {
            if (!trials[i].Outcome.IsLitBeforeParting)
                continue;
            int last = i;
            while (last + 1 < trials.Length && trials[last + 1].Outcome.IsLitBeforeParting)
                last++;
            double min = trials[i].TotalArea.SquareMeters, max = trials[last].TotalArea.SquareMeters;
            if (i > 0)
                min = Edge(trials[i - 1].TotalArea.SquareMeters, min, trial);
            bool reachesEnd = last == trials.Length - 1;
            if (!reachesEnd)
                max = Edge(trials[last + 1].TotalArea.SquareMeters, max, trial);
            yield return new VentWindow(Area.FromSquareMeters(min), Area.FromSquareMeters(max), reachesEnd);
            i = last;
        }
    }

    /// <summary>
    /// Bisects, in the logarithm, between an area that stays dark and one that lights; returns the lit side.
    /// </summary>
    private static double Edge(double dark, double lit, Func<double, VentTrial> trial)
    {
        while (Math.Max(dark, lit) / Math.Min(dark, lit) > EdgeRatio)
        {
            double middle = Math.Sqrt(dark * lit);
            if (trial(middle).Outcome.IsLitBeforeParting)
                lit = middle;
            else
                dark = middle;
        }

        return lit;
    }

    private static string Why(VentWindow w, Area asked, Area ring)
    {
        double below = asked / w.Min, above = w.Max / asked;
        string window = Invariant.Text($"{w.Min.SquareMillimeters:F1} to {w.Max.SquareMillimeters:F1} mm2 "
            + $"light{(w.ReachesScanEnd ? " (the larger is the side wide open)" : "")}");
        return below < 0.99 * above
            ? Invariant.Text($"{window}; {asked.SquareMillimeters:F1} mm2 stands a factor of {below:F2} from the lower edge and from "
                + $"the most that one ring of holes holds, {ring.SquareMillimeters:F0} mm2.")
            : Invariant.Text($"{window}; {asked.SquareMillimeters:F1} mm2 stands a factor of {below:F2} from either edge.");
    }

    private static string WhyNone(ImmutableArray<VentTrial> trials)
    {
        VentTrial best = trials.MaxBy(t => t.PeakGrainSurface.Kelvins)!;
        return Invariant.Text($"No vent area lights this gap. {best.TotalArea.SquareMillimeters:F1} mm2 comes nearest: "
            + $"{best.Outcome.Cause} No area cures it: a shorter gap, a joint that holds more, or a booster with more burn-through gas.");
    }
}
