using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Reviews;
using Staging.Core.Studies;

namespace ReliabilityStudy;

/// <summary>Ways into the demo plan: its second stage is lit through a gap.</summary>
internal static class DemoPlan
{
    /// <summary>An input of a gap as an input of the plan that holds it.</summary>
    public static StudyInput<StagingPlan> InPlan(StudyInput<GapProblem> input) =>
        StudyInput.Of<StagingPlan>(input.Path, input.Unit, input.Spread, (p, v) => WithStage(p, 1, s => s with { Ignition = Changed(s.Ignition, input, v) }));

    public static StagingPlan WithStage(StagingPlan plan, int index, Func<Stage, Stage> change) =>
        plan with { Flight = plan.Flight with { Stages = plan.Flight.Stages.SetItem(index, change(plan.Flight.Stages[index])) } };

    /// <summary>Inputs of a gap change its design alone; the bodies and the air come from the flight.</summary>
    private static StageIgnition.ByGap Changed(StageIgnition ignition, StudyInput<GapProblem> input, double value)
    {
        var gap = (GapIgnition)((StageIgnition.ByGap)ignition).Gap;
        GapProblem problem = input.With(StartingGaps.Bore18mm with { Design = gap.Design }, value);
        return (StageIgnition.ByGap)ignition with { Gap = gap with { Design = problem.Design } };
    }
}
