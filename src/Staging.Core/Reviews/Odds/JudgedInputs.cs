using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Sizing;
using Staging.Core.Studies;

namespace Staging.Core.Reviews;

/// <summary>What is judged of the gaps of a plan, as inputs of the plan.</summary>
internal sealed class JudgedInputs
{
    /// <summary>Inputs of the model itself: the same in every gap.</summary>
    public const string OfTheModel = "closures.";

    public JudgedInputs(StagingPlan plan)
    {
        Stage[] gaps = [.. plan.Flight.Stages.Where(s => s.Gap() is not null)];
        (Stage Stage, StudyInput<GapProblem> Input)[] judged =
            [.. gaps.SelectMany(s => GapInputs.JudgedFor(s.Gap()!.Design).Select(input => (s, input)))];
        Inputs =
        [
            .. judged.Where(j => !IsOfTheModel(j.Input)).Select(j => InOne(j.Input, j.Stage, Prefix(plan.Flight, j.Stage))),
            .. judged.Where(j => IsOfTheModel(j.Input)).GroupBy(j => j.Input.Path)
                .Select(g => InAll(g.First().Input, [.. g.Select(j => j.Stage)])),
        ];
        NotVaried = [.. gaps.Where(s => s.Gap()!.Design.Source is not (GapSource.Booster or GapSource.EndBurner))
            .Select(s => $"the source below {s.Name}")];
    }

    public ImmutableArray<StudyInput<StagingPlan>> Inputs { get; }

    /// <summary>What is not varied though it is uncertain: sources that have no judged inputs.</summary>
    public ImmutableArray<string> NotVaried { get; }

    /// <summary>
    /// What names that belong to one stage begin with, so that two stages do not share a name; nothing where there is
    /// one upper stage only.
    /// </summary>
    public static string Prefix(FlightPlan plan, Stage stage) =>
        plan.Stages.Length > 2 ? $"stage-{plan.Stages.Items.IndexOf(stage) + 1}." : "";

    private static bool IsOfTheModel(StudyInput<GapProblem> input) => input.Path.StartsWith(OfTheModel, StringComparison.Ordinal);

    private static StudyInput<StagingPlan> InOne(StudyInput<GapProblem> judged, Stage stage, string prefix)
    {
        StudyInput<StagingPlan> below = judged.Below(stage.Name);
        return below with { Path = prefix + judged.Path };
    }

    private static StudyInput<StagingPlan> InAll(StudyInput<GapProblem> judged, Stage[] stages)
    {
        StudyInput<StagingPlan>[] each = [.. stages.Select(s => judged.Below(s.Name))];
        return each[0] with { With = (plan, value) => each.Aggregate(plan, (p, input) => input.With(p, value)) };
    }
}
