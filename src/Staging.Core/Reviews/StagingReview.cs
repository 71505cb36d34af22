using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Plans;

namespace Staging.Core.Reviews;

/// <summary>A finished review: the flight, every gap, and the cautions. It holds the plan that made it.</summary>
/// <remarks>It informs. Local codes, the range safety officer and licensed practice decide.</remarks>
public sealed class StagingReview
{
    internal StagingReview(
        StagingPlan plan, ImmutableArray<ModelFinding> findings, FlightRun flight, ImmutableArray<GapReview> gaps, Odds? odds)
    {
        (Plan, Findings, Flight, Gaps, Odds) = (plan, findings, flight, gaps, odds);
        Cautions = CautionRules.For(plan, flight, gaps);
        Stages = [.. StageVerdicts.Of(plan, flight, gaps, odds)];
    }

    /// <summary>Whether the stages light: the least sure of <see cref="Stages"/>.</summary>
    public Verdict Verdict => StageVerdicts.Worst(Stages);

    /// <summary>
    /// Each stage above the lowest: whether it lights, what decides it, and what was tried where it stays cold.
    /// </summary>
    public ImmutableArray<StageVerdict> Stages { get; }

    /// <summary>
    /// How often every stage lights over what is judged; null where none were asked for, or nothing is judged.
    /// </summary>
    public Odds? Odds { get; }

    /// <summary>What was reviewed.</summary>
    public StagingPlan Plan { get; }

    /// <summary>The flight, with every body and every unlit case followed to the ground.</summary>
    public FlightRun Flight { get; }

    /// <summary>Every gap that was reached, lowest first.</summary>
    public ImmutableArray<GapReview> Gaps { get; }

    /// <summary>What to mind, each with its rule.</summary>
    public ImmutableArray<Caution> Cautions { get; }

    /// <summary>Findings of the check that did not stop the review.</summary>
    public ImmutableArray<ModelFinding> Findings { get; }

    /// <summary>Whether every staging of the plan came about and lit in the nominal case.</summary>
    public bool EveryStageLights =>
        Flight.Stagings.Length == Plan.Flight.Stages.Length - 1 && Flight.Stagings.All(s => s.Lit);

    /// <summary>The review in plain text: the verdict, gaps, flight, what comes down, findings and cautions.</summary>
    /// <returns>Lines of at most 100 characters, where names are short.</returns>
    public override string ToString() => ToString(100);

    /// <summary>The review in plain text, in lines of a given width.</summary>
    /// <param name="width">Characters in a line, 92 to 1000: prose is wrapped, and the table of what comes down is 92
    /// wide where names are short.</param>
    /// <returns>The text; the same in every culture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public string ToString(int width) => ReviewText.Of(this, Guard.In(width, 92, 1000, nameof(width)));

    /// <summary>
    /// The review as JSON for other programs: SI numbers with the unit in the key, null where something did not happen.
    /// </summary>
    /// <returns>The text.</returns>
    public string ToJson() => ReviewJson.Of(this);
}
