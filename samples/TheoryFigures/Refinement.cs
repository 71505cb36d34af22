using Samples;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace TheoryFigures;

/// <summary>One full case, all three models, under refinement of tolerance and grid.</summary>
internal static class Refinement
{
    public static IEnumerable<string> Table()
    {
        yield return "| | steps | peak [kPa gauge] | front at 3 ms [mm] | front at last vent [ms] | products at nozzle [ms] | lit [ms] | "
            + "grain at most [K] |";
        yield return "|---|---|---|---|---|---|---|---|";
        foreach (double tolerance in (double[])[1e-3, 1e-4, 1e-6, 1e-8, 1e-10])
            yield return Row($"two-zone, tolerance {Power(tolerance)}", new GapModel.TwoZone(), tolerance);
        foreach (double tolerance in (double[])[1e-4, 1e-6, 1e-8])
            yield return Row($"well-stirred, tolerance {Power(tolerance)}", new GapModel.WellStirred(), tolerance);
        foreach (int cells in (int[])[50, 100, 200, 400, 800])
            yield return Row($"one-dimensional, {cells} cells", new GapModel.OneDimensional { Cells = cells, CellsPerBore = 400 }, 1e-6);
        yield return Row("one-dimensional, 400 cells, Courant number 0.4", new GapModel.OneDimensional { Cells = 400, CourantNumber = 0.4 }, 1e-6);
    }

    private static string Power(double tolerance) => FormattableString.Invariant($"1e{Math.Log10(tolerance):F0}");

    private static string Row(string name, GapModel model, double tolerance)
    {
        GapRun run = Case().Solve(model, SolverOptions.Default with { RelativeTolerance = tolerance, MaxSteps = 10_000_000 });
        string At(GapEventKind kind) => run.TimeOf(kind) is { } t ? FormattableString.Invariant($"{t.Milliseconds:F4}") : "-";
        return FormattableString.Invariant(
            $"| {name} | {run.Statistics.AcceptedSteps} | {run.PeakGaugePressure.Kilopascals:F3} | {run.At(Duration.FromMilliseconds(3)).Front.Millimeters:F2} | {At(GapEventKind.FrontAtLastVent)} | {At(GapEventKind.ProductsAtNozzle)} | {At(GapEventKind.Lit)} | {run.PeakGrainSurface.Kelvins:F2} |");
    }

    /// <summary>150 mm of 18 mm bore, four holes of 5 mm, a joint of 40 N, and 0.25 g of fragments: enough to light.</summary>
    private static GapProblem Case()
    {
        GuideTube tube = StartingGaps.Bore18mm.Design.Tube with { Length = Length.FromMillimeters(150) };
        var holes = new VentHoles { Diameter = Length.FromMillimeters(5), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
        return StartingGaps.Bore18mm with
        {
            Horizon = Duration.FromMilliseconds(40),
            Design = StartingGaps.Bore18mm.Design with
            {
                Tube = tube,
                Source = StatedPulse.Booster with { Web = new WebBurn.OverTime { Mass = Mass.FromGrams(0.25), Time = Duration.FromMilliseconds(25) } },
                Vents = [Vent.BelowNozzle(tube, holes, Length.FromMillimeters(1))],
                Joint = StartingGaps.Bore18mm.Design.Joint.Coupler with
                {
                    BreakawayForce = Force.FromNewtons(40),
                    SlidingForce = Force.FromNewtons(32)
                },
            },
        };
    }
}
