using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>A run whose numbers end is an outcome with a cause and what there was up to then, never an exception.</summary>
public class NotSolvedTests
{
    private static readonly GapProblem Held = Bench.Gap.With(d => d with { Joint = Bench.Joint(2000), DischargeLaw = new Undefined() }) with { Horizon = Duration.FromMilliseconds(20) };

    public static TheoryData<GapModel> Models => [new GapModel.TwoZone(), new GapModel.WellStirred(), new GapModel.OneDimensional { Cells = 60 }];

    [Theory]
    [MemberData(nameof(Models))]
    public void A_law_that_answers_with_no_number_ends_the_run(GapModel model) => IsGivenUp(Held.Solve(model));

    [Theory]
    [MemberData(nameof(Models))]
    public void Also_in_the_wall_of_a_jacket(GapModel model) => IsGivenUp(Held.With(d => d with
    {
        Vents = [d.Vents[0] with { To = VentTarget.Jacket("j") }],
        Jackets = [new Jacket { Name = "j", Volume = Volume.FromCubicCentimeters(1), WallArea = Area.Zero, Openings = [new JacketOpening { Holes = d.Vents[0].Holes, To = VentTarget.Air }] }],
    }).Solve(model));

    [Theory]
    [MemberData(nameof(Models))]
    public void Also_in_the_annulus_once_the_joint_is_open(GapModel model) => IsGivenUp((Held with { AfterOpening = Duration.FromMilliseconds(5) }).With(d => d with
    {
        Vents = [],
        Joint = Bench.Joint(5, 1),
    }).Solve(model));

    private static void IsGivenUp(GapRun run)
    {
        var outcome = Assert.IsType<GapOutcome.NotSolved>(run.Outcome);

        // A step that the end of the tube spoils is taken back, and again at half its length, until it is given up with a sound gas before it.
        string told = outcome.Failure.Kind == SolverFailureKind.StepTooSmall ? "A cell lost its gas" : "finite";
        Assert.Contains(told, outcome.Cause, StringComparison.Ordinal);
        Assert.InRange(run.End.Milliseconds, 0.01, 19);
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
        Assert.True(run.At(run.End).GapPressure.Pascals > 101325);
        Assert.All(run.Sample(Duration.FromMilliseconds(0.1))[GapChannel.GapPressure].ToArray(), p => Assert.True(double.IsFinite(p)));
    }

    /// <summary>A user's law that knows nothing above 20 kPa of difference.</summary>
    private sealed class Undefined : IDischargeLaw
    {
        public ValidityRange Validity => SharpEdgedLaw.Perry.Validity;

        public double MassFlux_kg_per_m2s(in OrificeConditions conditions) =>
            conditions.UpstreamPressure_Pa - conditions.DownstreamPressure_Pa > 20e3 ? double.NaN : SharpEdgedLaw.Perry.MassFlux_kg_per_m2s(conditions);
    }
}
