using Staging.Core.Discharge;
using Staging.Core.Fronts;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using Staging.Core.Tests.Discharge;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>A run whose numbers end is an outcome with a cause and what there was up to then, never an exception.</summary>
public class NotSolvedTests
{
    private static readonly GapProblem Held = Bench.Gap.With(d => d with { Joint = Bench.Joint(2000), DischargeLaw = new UndefinedAbove(20e3) }) with { Horizon = Duration.FromMilliseconds(20) };

    public static TheoryData<GapModel> Models => [new GapModel.TwoZone(), new GapModel.WellStirred(), new GapModel.OneDimensional { Cells = 60 }];

    public static TheoryData<GapModel> LumpedModels => [new GapModel.TwoZone(), new GapModel.WellStirred()];

    public static TheoryData<GapModel> LightingModels => [new GapModel.TwoZone(), new GapModel.OneDimensional { Cells = 60 }];

    [Theory]
    [MemberData(nameof(Models))]
    public void A_law_that_answers_with_no_number_ends_the_run(GapModel model) => IsGivenUp(Held.Solve(model));

    [Theory]
    [MemberData(nameof(Models))]
    public void Also_in_the_wall_of_a_jacket(GapModel model) => IsGivenUp(Held.With(d => d with
    {
        Vents = [d.Vents[0] with { To = VentTarget.IntoJacket("j") }],
        Jackets = [new Jacket { Name = "j", Volume = Volume.FromCubicCentimeters(1), WallArea = Area.Zero, Openings = [new JacketOpening { Holes = d.Vents[0].Holes, To = VentTarget.Air }] }],
    }).Solve(model));

    [Theory]
    [MemberData(nameof(Models))]
    public void Also_in_the_annulus_once_the_joint_is_open(GapModel model) => IsGivenUp((Held with { AfterOpening = Duration.FromMilliseconds(5) }).With(d => d with
    {
        Vents = [],
        Joint = Bench.Joint(5, 1),
    }).Solve(model));

    /// <summary>There is nothing but the first moment then, and that can be read like any other.</summary>
    [Theory]
    [MemberData(nameof(LumpedModels))]
    public void A_run_that_ends_before_its_first_step_can_be_read(GapModel model)
    {
        GapRun run = Held.With(d => d with { DischargeLaw = new UndefinedAbove(-1) }).Solve(model);
        Assert.IsType<GapOutcome.NotSolved>(run.Outcome);
        Assert.Equal(Duration.Zero, run.End);
        Assert.Equal(Held.Surroundings.Pressure.Pascals, run.At(run.End).GapPressure.Pascals, 1e-9);
        Assert.Equal(run.Problem.Design.Grain.InitialTemperature, run.At(run.End).GrainSurface);
        FrontTravel front = run.FrontTravel(FrontMixing.Judged);
        Assert.Equal(0, front.SpeedAt(run.End).MetersPerSecond);
        Assert.Equal(0, front.HeatLostBy(run.End).Joules);
        Assert.Contains("0.00 ms", front.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(LightingModels))]
    public void A_run_that_is_cut_short_after_the_grain_was_hot_enough_is_not_called_lit(GapModel model)
    {
        GapProblem start = StartingGaps.Bore18mm, gap = start.With(d => d with
        {
            Source = Bench.Design.Motor() with { Web = Bench.Design.Web() with { Mass = Mass.FromGrams(0.25) } },
            Vents = [Vent.BelowNozzle(d.Tube, new VentHoles { Count = 4, Diameter = Length.FromMillimeters(4), WallThickness = Length.FromMillimeters(0.5) }, Length.FromMillimeters(1))],
            Joint = d.Joint.Coupler with { BreakawayForce = Force.FromNewtons(18), SlidingForce = Force.FromNewtons(9), Engagement = Length.FromMillimeters(40) },
        });
        GapRun whole = gap.Solve(model, SolverOptions.Default);
        var lit = Assert.IsType<GapOutcome.Lit>(whole.Outcome);
        Assert.InRange(lit.MarginToSeparation!.Value.Milliseconds, 1, 7);
        Assert.Null(whole.Failure);

        int steps = whole.Statistics.AcceptedSteps + whole.Statistics.RejectedSteps;
        GapRun cut = gap.Solve(model, SolverOptions.Default with { MaxSteps = (int)(0.96 * steps) });
        Assert.InRange(cut.End - lit.Time, Duration.FromMilliseconds(0.2), lit.MarginToSeparation.Value);
        Assert.True(cut.PeakGrainSurface > gap.Design.Grain.IgnitionTemperature);
        var outcome = Assert.IsType<GapOutcome.NotSolved>(cut.Outcome);
        Assert.Equal(SolverFailureKind.TooManySteps, cut.Failure!.Kind);
        Assert.Same(cut.Failure, outcome.Failure);
        Assert.False(outcome.IsLit);
        Assert.False(outcome.IsLitBeforeParting);
        Assert.Null(cut.TimeOf(GapEventKind.Lit));
        Assert.Null(cut.HeatAtLighting());
    }

    private static void IsGivenUp(GapRun run)
    {
        var outcome = Assert.IsType<GapOutcome.NotSolved>(run.Outcome);

        // A step that the end of the tube spoils is taken back, and again at half its length, until it is given up with a sound gas before it.
        string told = outcome.Failure.Kind == SolverFailureKind.StepTooSmall ? "A cell lost its gas" : "finite";
        Assert.Contains(told, outcome.Cause, StringComparison.Ordinal);
        Assert.InRange(run.End.Milliseconds, 0.01, 19);
        Assert.Equal(run.End, outcome.Time);
        Assert.All(run.Events, e => Assert.True(e.Time <= run.End));
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
        Assert.True(run.At(run.End).GapPressure.Pascals > 101325);
        Assert.All(run.Sample(Duration.FromMilliseconds(0.1))[GapChannel.GapPressure].ToArray(), p => Assert.True(double.IsFinite(p)));
    }

    /// <summary>The explicit and the implicit method share the steps that are allowed.</summary>
    [Fact]
    public void Steps_of_both_methods_count_together()
    {
        GapRun whole = StartingGaps.Bore18mm.Solve();
        int steps = whole.Statistics.AcceptedSteps + whole.Statistics.RejectedSteps;
        Assert.InRange(whole.Statistics.JacobianCalls, 1, steps - 50); // some of either
        GapRun cut = StartingGaps.Bore18mm.Solve(options: whole.Options with { MaxSteps = steps - 1 });
        Assert.Equal(SolverFailureKind.TooManySteps, cut.Failure?.Kind);
        Assert.Equal(steps - 1, cut.Statistics.AcceptedSteps + cut.Statistics.RejectedSteps);
    }
}
