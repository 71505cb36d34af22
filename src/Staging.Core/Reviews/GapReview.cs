using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Sizing;

namespace Staging.Core.Reviews;

/// <summary>What a review says of one gap.</summary>
public sealed class GapReview
{
    internal GapReview(StagingReport staging, GapRun run, VentAdvice? advice, GapBracket? bracket, ImmutableArray<TriedChange> tried) =>
        (Staging, Run, Advice, Bracket, Tried) = (staging, run, advice, bracket, tried);

    /// <summary>The staging in flight: state at burn-through, and what came of it.</summary>
    public StagingReport Staging { get; }

    /// <summary>The gap run at that state, with the vents as built.</summary>
    public GapRun Run { get; }

    /// <summary>
    /// The vent areas that would light at that state; null where the plan has no layout of new vents.
    /// </summary>
    public VentAdvice? Advice { get; }

    /// <summary>
    /// The same gap over what is unknown: whether the joint holds, whether fire arrives, which vents; null where the
    /// plan has no layout of new vents.
    /// </summary>
    public GapBracket? Bracket { get; }

    /// <summary>Changes that were run for a gap that stays cold: <see cref="StageVerdict.Tried"/>.</summary>
    internal ImmutableArray<TriedChange> Tried { get; }

    /// <summary>The gap in plain text: what happens when, what decided, and what to build.</summary>
    /// <returns>Lines of at most 100 characters.</returns>
    public override string ToString()
    {
        var sheet = new TextSheet(100);
        GapText.Write(this, sheet);
        return sheet.ToString();
    }
}
