using Staging.Core.Fronts;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using Staging.Core.Tests.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Reference;

/// <summary>The lines a user writes to read a run of a gap: shown in the reference, run here.</summary>
public class GapReadingSnippets
{
    private static readonly GapRun Run = StartingGaps.Bore18mm
        .With(vents: [Bench.Hole(StartingGaps.Bore18mm.Design.Tube, 4, 4)], breakaway: Force.FromNewtons(40)).Solve();

    [Fact]
    public void Every_outcome()
    {
        GapRun run = Run;
        #region gap-outcomes
        string answer = run.Outcome switch
        {
            GapOutcome.Lit lit => $"lit by {lit.Path}, {lit.SurfaceMargin} above ignition",
            GapOutcome.PushedApart parted => $"parts with the front {parted.FrontRemaining} away, {parted.PeakGaugePressure} at most",
            GapOutcome.VentedAway lost => $"vents away; {lost.ProductsAtNozzle:P0} products at the nozzle",
            GapOutcome.TooCool cool => $"{cool.SurfaceShortfall} too cool",
            GapOutcome.DidNotReach @short => $"stops {@short.FrontRemaining} short",
            GapOutcome.NotSolved given => given.Failure.Message,
            _ => "",
        };
        Console.WriteLine($"{answer}. {run.Outcome.Remedy}");
        #endregion
        Assert.StartsWith("lit by ", answer, StringComparison.Ordinal);
    }

    [Fact]
    public void Which_way_the_heat_came()
    {
        GapOutcome.Lit lit = Assert.IsType<GapOutcome.Lit>(Run.Outcome);
        #region ignition-path
        string way = lit.Path switch
        {
            IgnitionPath.Gas => "by hot gas at the nozzle",
            IgnitionPath.Pieces => "by burning pieces before the nozzle",
            IgnitionPath.Jet => "by the jet out of the booster",
            _ => "",
        };
        #endregion
        Assert.Contains(way, lit.Cause, StringComparison.Ordinal);
    }

    [Fact]
    public void Events_columns_and_ledger()
    {
        GapRun run = Run;
        #region gap-columns
        foreach (GapEvent what in run.Events)
            Console.WriteLine($"{what.Time.Milliseconds:F2} ms: {what.Kind}");
        GapSnapshot at = run.At(Duration.FromMilliseconds(5));
        Console.WriteLine($"{at.GapPressure}, front at {at.Front}, grain at {at.GrainSurface}");
        GapColumns columns = run.Sample(Duration.FromMilliseconds(0.1));
        ReadOnlyMemory<double> pressure = columns[GapChannel.GapPressure];
        GapLedger ledger = run.Ledger; // mass and energy, to round-off
        #endregion
        Assert.Equal(columns.Time_s.Length, pressure.Length);
        Assert.InRange(ledger.RelativeMassResidual, -1e-9, 1e-9);
    }

    [Fact]
    public void Heat_and_front()
    {
        GapRun run = Run;
        #region grain-heat
        if (run.HeatAtLighting() is GrainHeat heat)
            Console.WriteLine($"{heat.Total}, {heat.ConvectionShare:P0} of it by gas, {heat.ParticlesShare:P0} by particles");
        FrontTravel front = run.FrontTravel(FrontMixing.Judged);
        Console.WriteLine($"the front is half-way at {front.ArrivalAt(0.5 * run.Problem.Design.Tube.Length)}");
        #endregion
        Assert.NotNull(run.HeatAtLighting());
        Assert.NotNull(front.ArrivalAt(0.5 * run.Problem.Design.Tube.Length));
    }

    [Fact]
    public void Three_models()
    {
        GapProblem gap = Run.Problem;
        #region gap-models
        GapRun twoZone = gap.Solve(new GapModel.TwoZone()), stirred = gap.Solve(new GapModel.WellStirred());
        GapRun resolved = gap.Solve(new GapModel.OneDimensional { Cells = 60, ProfileTimes = [Duration.FromMilliseconds(2)] });
        GapProfile along = resolved.Profiles[0];
        Console.WriteLine($"{along.Pressure_Pa.Span[0]:F0} Pa at the booster, {along.Pressure_Pa.Span[^1]:F0} Pa at the nozzle");
        #endregion
        Assert.All(new[] { twoZone, stirred, resolved }, r => Assert.Null(r.Failure));
        Assert.Equal(60, along.Pressure_Pa.Length);
    }

    [Fact]
    public void A_run_that_is_given_up()
    {
        GapProblem gap = Run.Problem;
        #region solver-failure
        GapRun run = gap.Solve(options: SolverOptions.ForGaps with { MaxSteps = 100 });
        if (run.Failure is SolverFailure failure && failure.Kind == SolverFailureKind.TooManySteps)
            Console.WriteLine($"given up at {failure.Time}: {failure.Message}");
        #endregion
        Assert.Equal(SolverFailureKind.TooManySteps, run.Failure?.Kind);
    }
}
