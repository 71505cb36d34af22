using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
using Staging.Core.Studies;
using Staging.Core.Tests.Plans;
using UnitsNet;

namespace Staging.Core.Tests.Reviews;

/// <summary>Scalars of a stage and of a gap as inputs of the plan that holds them.</summary>
public class PlanInputsTests
{
    private static readonly StagingPlan Demo = DemoPlan.Plan;

    [Fact]
    public void A_scalar_of_a_stage_changes_that_stage_and_nothing_else()
    {
        StudyInput<StagingPlan> mass = Structure("sustainer");
        StagingPlan heavier = mass.With(Demo, 45);
        Assert.Equal(45, heavier.Flight.Stages[1].StructureMass.Grams, 1e-12);
        Assert.Same(Demo.Flight.Stages[0], heavier.Flight.Stages[0]);
        Assert.Equal(("sustainer.structure", "g"), (mass.Path, mass.Unit));
    }

    [Fact]
    public void Every_judged_input_of_a_gap_is_one_of_the_plan_and_moves_the_gap_that_the_flight_meets()
    {
        foreach (StudyInput<GapProblem> input in GapInputs.Judged)
        {
            StudyInput<StagingPlan> inPlan = input.Below("sustainer");
            double value = input.Spread.At(0.9);
            GapDesign expected = input.With(Demo.GapBelow(), value).Design, actual = inPlan.With(Demo, value).GapBelow().Design;
            Assert.Equal(expected, actual);
            Assert.Equal((input.Path, input.Unit, input.Spread), (inPlan.Path, inPlan.Unit, inPlan.Spread));
        }
    }

    [Fact]
    public void What_does_not_fit_is_refused_when_the_set_is_made()
    {
        Assert.Contains("\"sustainer\"", Refusal(Structure("nose")), StringComparison.Ordinal);
        Assert.Contains("not lit through a gap", Refusal(GapInputs.Judged[0].Below("booster")), StringComparison.Ordinal);
        StudyInput<GapProblem> air = new StudyInput<GapProblem>(
            "air.temperature", "K", Distribution.Uniform(280, 300), (p, v) => p with { Surroundings = p.Surroundings with { Temperature = Temperature.FromKelvins(v) } });
        Assert.Contains("changes more than the design", Refusal(air.Below("sustainer")), StringComparison.Ordinal);
    }

    private static StudyInput<StagingPlan> Structure(string stage) =>
        PlanInputs.OfStage(stage, "sustainer.structure", "g", Distribution.Normal(38, 1.5), (s, v) => s with { StructureMass = Mass.FromGrams(v) });

    private static string Refusal(StudyInput<StagingPlan> input) => Assert.ThrowsAny<Exception>(() => new InputSet<StagingPlan>(Demo, [input])).ToString();
}
