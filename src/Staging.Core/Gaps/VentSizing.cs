using System.Collections.Immutable;
using System.Globalization;
using Staging.Core.Discharge;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Finds the vent areas that light the upper motor.</summary>
public static class VentSizing
{
    /// <summary>Areas tried in the first scan, evenly in the logarithm. An interval narrower than one step may be missed.</summary>
    private const int ScanPoints = 24;

    /// <summary>Smallest total area tried [m2], 0.5 mm2: a pinhole that vents nothing within milliseconds.</summary>
    private const double SmallestArea = 0.5e-6;

    /// <summary>Share of the circumference that the holes may take [-]: a judgement, the rest must carry the load.</summary>
    private const double OpenCircumference = 0.8;

    /// <summary>Ratio of areas at which an edge of an interval counts as found [-].</summary>
    private const double EdgeRatio = 1.01;

    /// <summary>Tries total vent areas in place of the vents of the problem, from a pinhole to the largest that fits, and refines the edges.</summary>
    /// <param name="problem">The gap; its own vents are not used.</param>
    /// <param name="layout">How the area is drilled.</param>
    /// <param name="options">How to integrate; null for the defaults.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>The advice; it says so when no area lights.</returns>
    /// <exception cref="InvalidModelException">The problem is in error with every area.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static VentAdvice SizeVents(
        this GapProblem problem, VentLayout layout, SolverOptions? options = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(layout);
        VentTrial Try(double area)
        {
            Area total = Area.FromSquareMeters(area);
            GapDesign design = problem.Design with { Vents = [layout.VentOf(problem.Design.Tube, total)] };
            GapRun run = (problem with { Design = design }).Solve(options: options, cancellationToken: cancellationToken);
            return new VentTrial(total, run.Outcome, run.PeakGaugePressure, run.PeakGrainSurface);
        }

        double largest = LargestArea(problem.Design.Tube, layout);
        double step = Math.Pow(largest / SmallestArea, 1.0 / (ScanPoints - 1));
        ImmutableArray<VentTrial> trials = [.. Enumerable.Range(0, ScanPoints).Select(i => Try(SmallestArea * Math.Pow(step, i)))];
        ImmutableArray<VentWindow> windows = [.. Windows(trials, Try)];
        VentWindow? widest = windows.MaxBy(w => w.FactorToEdges);
        return new VentAdvice
        {
            Layout = layout,
            Trials = trials,
            Windows = windows,
            Holes = widest is null ? null : HolePattern.ForArea(widest.Middle, layout.HoleCount, layout.WallThickness, layout.Drills),
            Reason = widest is null ? WhyNone(trials) : Why(widest),
        };
    }

    /// <summary>Largest total area that leaves enough of the wall, no hole wider than the bore [m2].</summary>
    private static double LargestArea(GuideTube tube, VentLayout layout)
    {
        double bore = tube.Bore.Meters;
        double room = tube.Length.Meters - layout.Land.Meters;
        double diameter = Math.Min(Math.Min(OpenCircumference * Math.PI * bore / layout.HoleCount, bore), 0.9 * room);
        return Math.Max(layout.HoleCount * Math.PI / 4 * diameter * diameter, 2 * SmallestArea);
    }

    private static IEnumerable<VentWindow> Windows(ImmutableArray<VentTrial> trials, Func<double, VentTrial> trial)
    {
        for (int i = 0; i < trials.Length; i++)
        {
            if (!trials[i].Outcome.IsLit)
                continue;
            int last = i;
            while (last + 1 < trials.Length && trials[last + 1].Outcome.IsLit)
                last++;
            double least = trials[i].TotalArea.SquareMeters, greatest = trials[last].TotalArea.SquareMeters;
            if (i > 0)
                least = Edge(trials[i - 1].TotalArea.SquareMeters, least, trial);
            bool reachesEnd = last == trials.Length - 1;
            if (!reachesEnd)
                greatest = Edge(trials[last + 1].TotalArea.SquareMeters, greatest, trial);
            yield return new VentWindow(Area.FromSquareMeters(least), Area.FromSquareMeters(greatest), reachesEnd);
            i = last;
        }
    }

    /// <summary>Bisects, in the logarithm, between an area that stays dark and one that lights; returns the lit side.</summary>
    private static double Edge(double dark, double lit, Func<double, VentTrial> trial)
    {
        while (Math.Max(dark, lit) / Math.Min(dark, lit) > EdgeRatio)
        {
            double middle = Math.Sqrt(dark * lit);
            if (trial(middle).Outcome.IsLit)
                lit = middle;
            else
                dark = middle;
        }

        return lit;
    }

    private static string Why(VentWindow w) => string.Create(
        CultureInfo.InvariantCulture,
        $"{w.Least.SquareMillimeters:F1} to {w.Greatest.SquareMillimeters:F1} mm2 light{(w.ReachesScanEnd ? " (the larger is the most that fits)" : "")}; {w.Middle.SquareMillimeters:F1} mm2 stands a factor of {w.FactorToEdges:F2} from either edge.");

    private static string WhyNone(ImmutableArray<VentTrial> trials)
    {
        VentTrial best = trials.MaxBy(t => t.PeakGrainSurface.Kelvins)!;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"No vent area lights this gap. {best.TotalArea.SquareMillimeters:F1} mm2 comes nearest: {best.Outcome.Cause} {best.Outcome.Cure}");
    }
}
