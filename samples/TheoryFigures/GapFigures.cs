using Samples;
using ScottPlot;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using UnitsNet;

namespace TheoryFigures;

/// <summary>
/// The two lumped models beside each other, and what an open side costs: the invented starting gap with a stated pulse,
/// its joint held.
/// </summary>
internal static class GapFigures
{
    private static readonly GapModel[] Models = [new GapModel.TwoZone(), new GapModel.WellStirred()];
    private static readonly double[] Lengths = [25, 40, 60, 90, 120, 160, 200, 250, 320, 400, 500, 600, 750, 900];
    private static readonly VentLayout Layout = new() { HoleCount = 4 };

    public static IEnumerable<(string Name, Plot Plot)> All()
    {
        yield return ("gap-models-pressure",
            Agreement("Peak pressure of the two lumped models", "peak gauge pressure [kPa]", run => run.PeakGaugePressure.Kilopascals)
            .Note("one 6 mm hole", 75, 200, 1)
            .Note("four times that", 430, 10, 0)
            .Note("solid: two-zone, dashed: well-stirred", 430, 225, 3)
            .Limits(0, 950, 0, 250));
        yield return ("gap-models-arrival", Agreement("Half of what leaves at the last vent is products", "time since burn-through [ms]",
            run => run.TimeOf(GapEventKind.FrontAtLastVent)?.Milliseconds ?? double.NaN)
            .Note("one 6 mm hole", 370, 20.5, 1)
            .Note("four times that", 740, 12, 0)
            .Note("solid: two-zone, dashed: well-stirred", 430, 2, 3)
            .Limits(0, 950, 0, 30));
        yield return ("open-side", OpenSide());
    }

    private static Plot Agreement(string title, string left, Func<GapRun, double> what)
    {
        Plot plot = Figure.New(title, "length of the gap [mm]", left);
        foreach ((double area, int colour) in (ReadOnlySpan<(double, int)>)[(28.3, 1), (113, 0)])
        {
            foreach (GapModel model in Models)
            {
                (double X, double Y)[] points = [.. Lengths.Select(l => (X: l, Y: what(Held(l, area).Solve(model))))
                    .Where(p => double.IsFinite(p.Y))];
                ScottPlot.Plottables.Scatter line = plot.Add.ScatterLine(points.Select(p => p.X).ToArray(),
                    points.Select(p => p.Y).ToArray(), Curves.Colours[colour]);
                line.LineWidth = 3;
                line.LinePattern = model is GapModel.WellStirred ? LinePattern.Dashed : LinePattern.Solid;
            }
        }

        return plot;
    }

    private static Plot OpenSide()
    {
        double[] areas = [.. Enumerable.Range(0, 60).Select(i => 10 * Math.Pow(10, i * 2.85 / 59))];
        Plot plot = Figure.New("A side cut open, gap 200 mm, bore 18 mm, 0.25 g of fragments", "total vent area [mm2], logarithm to ten",
            "peak grain surface [K]");
        foreach ((double core, string label, int colour, bool dashed) in (ReadOnlySpan<(double, string, int, bool)>)[(5.5,
            "with the loss of a free jet", 1, false), (100, "without", 3, true)])
        {
            double[] peak = [.. areas.Select(a => Held(200, a, core, grams: 0.25).Solve().PeakGrainSurface.Kelvins)];
            ScottPlot.Plottables.Scatter line = plot.Add.ScatterLine(areas.Select(Math.Log10).ToArray(), peak, Curves.Colours[colour]);
            line.LineWidth = 3;
            line.LinePattern = dashed ? LinePattern.Dashed : LinePattern.Solid;
            plot.Note(label, dashed ? 3.68 : 2.78, dashed ? 560 : 450, colour);
        }

        GuideTube tube = Held(200, 10).Design.Tube;
        double ring = Math.Log10(Layout.LargestRing(tube).SquareMillimeters);
        plot.Add.VerticalLine(ring, 1, Curves.Colours[3], LinePattern.Dotted);
        plot.Note(" most that one ring of four holes holds", ring, 290, 3);
        return plot.Curve(_ => 773, 1, 3.9, "ignition", 0, 0.02, dashed: true).Limits(1, 3.9, 280, 900);
    }

    private static GapProblem Held(double length_mm, double area_mm2, double core = 5.5, double grams = 0.19)
    {
        GapProblem start = StartingGaps.Bore18mm;
        GuideTube tube = start.Design.Tube with { Length = Length.FromMillimeters(length_mm) };
        GapProblem held = start with
        {
            Design = start.Design with
            {
                Tube = tube,
                Source = StatedPulse.Booster with
                {
                    Web = new WebBurn.OverTime { Mass = Mass.FromGrams(grams), Time = Duration.FromMilliseconds(25) },
                },
                Joint = start.Design.Joint.Coupler with
                {
                    BreakawayForce = Force.FromNewtons(2000),
                    SlidingForce = Force.FromNewtons(2000)
                },
                MixingAndHeat = start.Design.MixingAndHeat with { FreeJetCoreInBores = core },
            },
        };
        return held.WithVents(Layout, Area.FromSquareMillimeters(area_mm2));
    }
}
