using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Plans;
using Staging.Core.Studies;

namespace Staging.Core.Reviews;

/// <summary>How often the stages of a plan light when what is judged of its gaps is uncertain.</summary>
/// <remarks>
/// It informs and permits nothing. Most of the spread is what is not known, not what scatters from flight to flight:
/// an input that was measured belongs into a <see cref="ReliabilityStudy{T, TResult}"/> with a spread of its own.
/// </remarks>
public sealed class Odds
{
    internal Odds(StagingPlan plan, ReliabilityRun run, ImmutableArray<string> notVaried)
    {
        (Plan, Run, NotVaried) = (plan, run, notVaried);
        CaseColumns columns = run.Columns();
        Stages = [.. plan.Flight.Stages.Skip(1).Select(s => Of(s, plan, run, columns))];
    }

    /// <summary>The plan.</summary>
    public StagingPlan Plan { get; }

    /// <summary>All cases, with their inputs, outcomes and measures: margins [K] and apogee [m].</summary>
    public ReliabilityRun Run { get; }

    /// <summary>In how many cases every stage lit. A case that was refused or not solved counts against it.</summary>
    public Proportion EveryStageLights => Run.Probability(OddsStudy.EveryStage);

    /// <summary>Each stage above the lowest.</summary>
    public ImmutableArray<StageOdds> Stages { get; }

    /// <summary>
    /// How far the grain surface got above its ignition temperature [K], in the gap where it got least far; below 0
    /// where a stage stayed cold, and none where a gap was not solved.
    /// </summary>
    public MeasureSummary Margin => Run.Measure(OddsStudy.Margin);

    /// <summary>
    /// Judged inputs that a gap does not have, so that they were not varied; with them the spread would be wider.
    /// </summary>
    public ImmutableArray<string> NotVaried { get; }

    /// <summary>
    /// Which inputs move the margin, strongest first: their rank correlation with it (C. Spearman, Am. J. Psychol. 15
    /// (1904) 72-101) over the same cases. Nothing is run again.
    /// </summary>
    /// <remarks>
    /// The correlation is near 1 or -1 where the margin rises or falls with the input whatever the others do, and near
    /// 0 where it does not depend on the input, or rises here and falls there. To tell those two apart, or to find
    /// inputs that act together, screen them: <see cref="SensitivityStudy{T}.Screen"/>.
    /// </remarks>
    /// <returns>One correlation for each input.</returns>
    public InputRanking WhatMatters() => new(Run.Columns());

    /// <summary>
    /// The odds in a few lines: each stage with the score interval at 95 %, and percentiles of the margin.
    /// </summary>
    /// <returns>The text.</returns>
    public override string ToString() => OddsText.Of(this);

    /// <summary>
    /// The odds as JSON for other programs, with what matters: SI numbers with the unit in the key, null where no case
    /// has the number.
    /// </summary>
    /// <returns>The text.</returns>
    public string ToJson() => OddsJson.Of(this);

    /// <summary>Cases in which the gap of a stage was not solved.</summary>
    internal long NotSolved => Stages.Sum(s => Run.Outcomes.GetValueOrDefault(OddsStudy.NotSolved(s.Stage)));

    private static StageOdds Of(Stage stage, StagingPlan plan, ReliabilityRun run, CaseColumns columns)
    {
        string prefix = JudgedInputs.Prefix(plan.Flight, stage);
        NumberColumn lit = columns.Measures.First(m => m.Name.Name == prefix + OddsStudy.Lit);
        var share = new Proportion((long)lit.Values.ToArray().Sum(), run.Cases);
        return new StageOdds(stage.Name, share, stage.Gap() is null ? null : run.Measure(prefix + OddsStudy.Margin));
    }
}
