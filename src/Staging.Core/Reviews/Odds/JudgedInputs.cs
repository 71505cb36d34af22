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
    private const string OfTheModel = "closures.";

    public JudgedInputs(StagingPlan plan)
    {
        var inputs = ImmutableArray.CreateBuilder<StudyInput<StagingPlan>>();
        var left = ImmutableArray.CreateBuilder<string>();
        Stage[] gaps = [.. plan.Flight.Stages.Where(s => s.Gap() is not null)];
        foreach (StudyInput<GapProblem> judged in GapInputs.Judged)
        {
            Stage[] having = [.. gaps.Where(s => Has(s.Gap()!.Design, judged))];
            left.AddRange(gaps.Except(having).Select(s => $"{judged.Path} below {s.Name}"));
            if (judged.Path.StartsWith(OfTheModel, StringComparison.Ordinal) && having.Length > 0)
                inputs.Add(InAll(judged, having));
            else
                inputs.AddRange(having.Select(s => InOne(judged, s, Prefix(plan.Flight, s))));
        }

        (Inputs, NotVaried) = (inputs.ToImmutable(), left.ToImmutable());
    }

    public ImmutableArray<StudyInput<StagingPlan>> Inputs { get; }

    /// <summary>Judged inputs that a gap does not have.</summary>
    public ImmutableArray<string> NotVaried { get; }

    /// <summary>
    /// What names that belong to one stage begin with, so that two stages do not share a name; nothing where there is
    /// one upper stage only.
    /// </summary>
    public static string Prefix(FlightPlan plan, Stage stage) =>
        plan.Stages.Length > 2 ? $"stage-{plan.Stages.Items.IndexOf(stage) + 1}." : "";

    /// <summary>Whether a gap has an input: the likeliest value can be put in.</summary>
    private static bool Has(GapDesign design, StudyInput<GapProblem> input)
    {
        try
        {
            input.With(StartingGaps.Bore18mm with { Design = design }, input.Spread.Median);
            return true;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

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
