using Samples;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace TheoryFigures;

/// <summary>Front arrival and peak pressure of the three models over gap length and vent area, otherwise the starting gap with a stated pulse, its joint holding.</summary>
internal static class ModelMap
{
    /// <summary>Relative difference from which the two-zone and the one-dimensional model count as apart [-].</summary>
    public const double Apart = 0.1;

    private const int Cells = 100;

    /// <summary>Thickness of a front that is hardly any [bores].</summary>
    private const double ThinFront = 0.05;

    public static readonly double[] Lengths_mm = [25, 50, 100, 200, 400, 900];

    /// <summary>Vent areas in holes of 6 mm.</summary>
    public static readonly double[] Areas = [0, 0.25, 0.5, 1, 2, 4];

    private static readonly Lazy<Spot[]> All = new(() => [.. Lengths_mm.SelectMany(l => Areas.Select(a => Of(l, a)))]);

    public static IReadOnlyList<Spot> Spots => All.Value;

    public static IEnumerable<string> Arrivals()
    {
        yield return "| gap [mm] | vent area | two-zone | well-stirred | one-dimensional | apart [%] | thin and still: two-zone | one-dimensional |";
        yield return "|---|---|---|---|---|---|---|---|";
        foreach (Spot s in Spots)
        {
            yield return FormattableString.Invariant(
                $"| {s.Length_mm} | {s.Area} | {Arrives(s.Displaced)} | {Arrives(s.Stirred)} | {Arrives(s.Resolved)} | {Mark(s.Arrival)} | {Arrives(s.Still)} | {Arrives(s.StillResolved)} |");
        }
    }

    public static IEnumerable<string> PeakPressures()
    {
        yield return "| gap [mm] | vent area | two-zone | well-stirred | one-dimensional | apart [%] | at [ms]: two-zone | one-dimensional |";
        yield return "|---|---|---|---|---|---|---|---|";
        foreach (Spot s in Spots)
        {
            yield return FormattableString.Invariant(
                $"| {s.Length_mm} | {s.Area} | {Peaks(s.Displaced)} | {Peaks(s.Stirred)} | {Peaks(s.Resolved)} | {Mark(s.Peak)} | {PeaksAt(s.Displaced)} | {PeaksAt(s.Resolved)} |");
        }
    }

    private static string Mark(double? difference) => IsApart(difference) ? FormattableString.Invariant($"{100 * difference:+0;-0}") : "";

    /// <summary>The two places whose peaks are apart, with openings of the chamber that take 1 ms and longer.</summary>
    public static IEnumerable<string> Openings()
    {
        yield return "| gap [mm] | vent area | opening [ms] | peak [kPa gauge]: two-zone | one-dimensional | difference |";
        yield return "|---|---|---|---|---|---|";
        foreach (double length in (double[])[50, 200])
        {
            foreach (double opening in (double[])[1, 3, 5])
            {
                GapProblem gap = Gap(length, 4);
                GapSource.Booster slow = StatedPulse.Booster with { OpeningTime = Duration.FromMilliseconds(opening) };
                gap = gap with { Design = gap.Design with { Source = slow } };
                GapRun displaced = gap.Solve(), resolved = gap.Solve(new GapModel.OneDimensional { Cells = Cells });
                yield return FormattableString.Invariant(
                    $"| {length} | 4 | {opening} | {Peaks(displaced)} | {Peaks(resolved)} | {100 * (resolved.PeakGaugePressure / displaced.PeakGaugePressure - 1):F1} % |");
            }
        }
    }

    /// <summary>Whether a relative difference is large enough to mark.</summary>
    public static bool IsApart(double? difference) => difference is > Apart or < -Apart;

    private static string Arrives(GapRun run) => run.TimeOf(GapEventKind.FrontAtLastVent) is { } t ? FormattableString.Invariant($"{t.Milliseconds:F2}") : "-";

    private static string Peaks(GapRun run) => FormattableString.Invariant($"{run.PeakGaugePressure.Kilopascals:F1}");

    private static string PeaksAt(GapRun run)
    {
        GapColumns columns = run.Sample(Duration.FromMicroseconds(20));
        ReadOnlySpan<double> pressure = columns[GapChannel.GapPressure].Span;
        int most = 0;
        for (int i = 1; i < pressure.Length; i++)
            most = pressure[i] > pressure[most] ? i : most;
        return FormattableString.Invariant($"{1e3 * columns.Time_s.Span[most]:F1}");
    }

    private static GapProblem Gap(double length, double area)
    {
        GuideTube tube = StartingGaps.Bore18mm.Design.Tube with { Length = Length.FromMillimeters(length) };
        return StartingGaps.Bore18mm with
        {
            Horizon = Duration.FromMilliseconds(30),
            Design = StartingGaps.Bore18mm.Design with
            {
                Tube = tube,
                Source = StatedPulse.Booster,
                Vents = area > 0 ? [Vent.BelowNozzle(tube, Holes(area), Length.FromMillimeters(1))] : [],
                Joint = StartingGaps.Bore18mm.Design.Joint.Coupler with { BreakawayForce = Force.FromNewtons(2000), SlidingForce = Force.FromNewtons(2000) },
            },
        };
    }

    private static Spot Of(double length, double area)
    {
        GapProblem gap = Gap(length, area);
        MixingAndHeat without = gap.Design.MixingAndHeat with { FrontThicknessInBores = ThinFront, DeadEndExchange = 0 };
        GapProblem still = gap with { Design = gap.Design with { MixingAndHeat = without } };
        var resolved = new GapModel.OneDimensional { Cells = Cells };
        return new Spot(length, area, gap.Solve(), gap.Solve(new GapModel.WellStirred()), gap.Solve(resolved), still.Solve(), still.Solve(resolved));
    }

    private static VentHoles Holes(double area) => new()
    {
        Count = Math.Max(1, (int)area),
        Diameter = Length.FromMillimeters(6 * Math.Sqrt(Math.Min(area, 1))),
        WallThickness = Length.FromMillimeters(0.5),
    };

    /// <summary>
    /// One length and area, with its runs; the still ones are those with a thin front and no exchange with the dead
    /// end.
    /// </summary>
    internal sealed record Spot(double Length_mm, double Area, GapRun Displaced, GapRun Stirred, GapRun Resolved, GapRun Still, GapRun StillResolved)
    {
        /// <summary>
        /// Arrival of the front in the one-dimensional model over that in the two-zone model, less 1; null where one
        /// does not arrive.
        /// </summary>
        public double? Arrival => Later(Displaced, Resolved);

        /// <summary>The same with a thin front, and no exchange with the dead end in either model.</summary>
        public double? ArrivalOfStill => Later(Still, StillResolved);

        public double? Peak => Resolved.PeakGaugePressure / Displaced.PeakGaugePressure - 1;

        private static double? Later(GapRun displaced, GapRun resolved) =>
            resolved.TimeOf(GapEventKind.FrontAtLastVent) / displaced.TimeOf(GapEventKind.FrontAtLastVent) - 1;
    }
}
