using System.Collections.Immutable;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>
/// Three questions of a gap, each answered over what is unknown: does the joint hold, does fire arrive and how, which
/// vent area. Made by <see cref="VentSizing.Bracket"/>.
/// </summary>
/// <remarks>
/// Every unknown stands at one of its ends in turn, in all combinations. A corner that was not solved is neither lit
/// nor unlit, and its joint neither holds nor opens: the verdicts are over the others, and the text tells how many are
/// left out. Odds over the same unknowns, with their distributions, are a study's. What lights in all corners may still
/// fail: local codes, the range safety officer and licensed practice decide; plan for a stage that does not light.
/// </remarks>
public sealed class GapBracket
{
    internal GapBracket(GapProblem problem, ImmutableArray<string> unknowns, ImmutableArray<BracketCase> cases)
    {
        (Problem, Unknowns, Cases) = (problem, unknowns, cases);
        Solved = [.. cases.Where(c => c.IsSolved)];
        Lights = Over(Solved.Count(c => c.Outcome.IsLitBeforeParting));
        JointHolds = Over(Solved.Count(c => c.JointOpens is null));
    }

    /// <summary>The gap.</summary>
    public GapProblem Problem { get; }

    /// <summary>What is unknown, each at two ends.</summary>
    public ImmutableArray<string> Unknowns { get; }

    /// <summary>The corners.</summary>
    public ImmutableArray<BracketCase> Cases { get; }

    /// <summary>Where in the bracket the joint never opens.</summary>
    public BracketVerdict JointHolds { get; }

    /// <summary>Where in the bracket the upper motor is lit before the joint opens.</summary>
    public BracketVerdict Lights { get; }

    /// <summary>
    /// The gap with pieces that stay at the booster, all else as given: whether gas alone would light it. Null for a
    /// source without pieces.
    /// </summary>
    public GapOutcome? GasAlone { get; internal init; }

    /// <summary>
    /// Least vent area that was seen to light where fresh faces are never lit; null where none was, or there are no
    /// pieces.
    /// </summary>
    public Area? OldFacesVent { get; internal init; }

    /// <summary>
    /// Least vent area that was seen to light where fresh faces are lit at once; null where none was, or there are no
    /// pieces.
    /// </summary>
    public Area? AllFacesVent { get; internal init; }

    /// <summary>
    /// Vent area by which a steady flow from the old faces leaves the joint just closed, whatever the length of the
    /// gap, at 1 GPa at most; null for a source without pieces, and where the joint bears no pressure, so that no area
    /// is enough.
    /// </summary>
    public Area? OldFacesSteadyVent { get; internal init; }

    /// <summary>The same for the flow from all faces.</summary>
    public Area? AllFacesSteadyVent { get; internal init; }

    /// <summary>When the pieces come to the nozzle, fast and slow; null without pieces.</summary>
    public (Duration Fast, Duration Slow)? Arrival { get; internal init; }

    /// <summary>
    /// How soon after its arrival a piece lodged against the throat lights the grain at the earliest: an optimistic
    /// bound; null without pieces.
    /// </summary>
    public Duration? ContactDelay { get; internal init; }

    /// <summary>Name of the unknown on which the outcome hangs most; null where it hangs on none.</summary>
    public string? Decides => Unknowns.MaxBy(Turns) is { } most && Turns(most) > 0 ? most : null;

    /// <summary>The verdict in one sentence.</summary>
    public string Verdict => BracketText.Verdict(this);

    /// <summary>Whether vents were searched: not where the layout cannot be drilled.</summary>
    internal bool IsSearched { get; init; }

    /// <summary>What droplets might do, in words.</summary>
    internal string Droplets { get; init; } = "";

    /// <summary>The corners that were solved.</summary>
    internal ImmutableArray<BracketCase> Solved { get; }

    /// <summary>How many pairs of solved corners that differ in one unknown alone differ in the outcome.</summary>
    internal int Turns(string unknown)
    {
        int i = Unknowns.IndexOf(unknown), stride = 1 << i;
        return Enumerable.Range(0, Cases.Length).Count(k => (k & stride) == 0 && Cases[k].IsSolved && Cases[k | stride].IsSolved
            && Cases[k].Outcome.IsLitBeforeParting != Cases[k | stride].Outcome.IsLitBeforeParting);
    }

    /// <summary>The three answers and the verdict.</summary>
    /// <returns>Lines of at most 100 characters.</returns>
    public override string ToString() => BracketText.Of(this);

    private BracketVerdict Over(int holding) =>
        holding == 0 ? BracketVerdict.Nowhere : holding == Solved.Length ? BracketVerdict.Throughout : BracketVerdict.InPart;
}
