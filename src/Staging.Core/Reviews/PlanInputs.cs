using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Sizing;
using Staging.Core.Studies;

namespace Staging.Core.Reviews;

/// <summary>Uncertain scalars of a whole plan: of one of its stages, or of the gap below one.</summary>
public static class PlanInputs
{
    /// <summary>A scalar of a stage.</summary>
    /// <param name="stage">Name of the stage.</param>
    /// <param name="path">What it is called in results, for example <c>sustainer.structure</c>.</param>
    /// <param name="unit">Unit of its values; <c>-</c> where there is none.</param>
    /// <param name="spread">How it scatters, in [unit].</param>
    /// <param name="with">Puts a value, in [unit], into a copy of the stage: <c>(s, v) => s with { ... }</c>.</param>
    /// <returns>
    /// The input; put into a plan without such a stage it throws an <see cref="ArgumentException"/>, as when an
    /// <see cref="InputSet{T}"/> is made of it.
    /// </returns>
    /// <exception cref="ArgumentException">The path is blank or holds other characters than letters, digits, dots and
    /// hyphens.</exception>
    public static StudyInput<StagingPlan> OfStage(string stage, string path, string unit, Distribution spread,
        Func<Stage, double, Stage> with)
    {
        ArgumentNullException.ThrowIfNull(stage);
        ArgumentNullException.ThrowIfNull(with);
        return new StudyInput<StagingPlan>(path, unit, spread, (plan, v) => Changed(plan, Index(plan, stage), s => with(s, v)));
    }

    /// <summary>
    /// A scalar of a gap, such as those of <see cref="GapInputs"/>, as one of the plan that holds the gap.
    /// </summary>
    /// <param name="input">The input; it may change the <see cref="GapProblem.Design"/> alone and read nothing else,
    /// since in a plan bodies and air come from the flight.</param>
    /// <param name="stage">Name of the stage above the gap.</param>
    /// <returns>
    /// The input, by the same name; put into a plan without such a gap it throws an <see cref="ArgumentException"/>.
    /// </returns>
    public static StudyInput<StagingPlan> Below(this StudyInput<GapProblem> input, string stage)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(stage);
        return new StudyInput<StagingPlan>(input.Path, input.Unit, input.Spread,
            (plan, v) => Changed(plan, Index(plan, stage), s => Through(s, input, v)));
    }

    private static Stage Through(Stage stage, StudyInput<GapProblem> input, double value)
    {
        if (stage.Ignition is not StageIgnition.ByGap { Gap: GapIgnition gap } ignition)
            throw new ArgumentException(
                $"\"{Excerpt.Of(stage.Name)}\" is not lit through a gap that \"{Excerpt.Of(input.Path)}\" could belong to.", nameof(input));
        GapProblem before = StartingGaps.Bore18mm with { Design = gap.Design }, after = input.With(before, value);
        if (after with { Design = before.Design } != before)
            throw new ArgumentException(
                $"\"{Excerpt.Of(input.Path)}\" changes more than the design of a gap; in a plan, bodies and air come from the "
                + "flight.", nameof(input));
        return stage with { Ignition = ignition with { Gap = gap with { Design = after.Design } } };
    }

    private static StagingPlan Changed(StagingPlan plan, int stage, Func<Stage, Stage> change) =>
        plan with { Flight = plan.Flight with { Stages = plan.Flight.Stages.Items.SetItem(stage, change(plan.Flight.Stages[stage])) } };

    private static int Index(StagingPlan plan, string stage)
    {
        for (int i = 0; i < plan.Flight.Stages.Length; i++)
        {
            if (plan.Flight.Stages[i].Name == stage)
                return i;
        }

        throw new ArgumentException($"The plan has no stage \"{Excerpt.Of(stage)}\"; its stages are "
            + $"{string.Join(" and ", plan.Flight.Stages.Select(s => $"\"{Excerpt.Of(s.Name)}\""))}.", nameof(stage));
    }
}
