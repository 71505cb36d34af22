using System.Collections.Immutable;
using Staging.Core.Studies;

namespace Staging.Core.Reviews;

/// <summary>Whether one stage above the lowest lights, and what decides it.</summary>
public sealed class StageVerdict
{
    internal StageVerdict(string stage, Verdict verdict, bool isAssumed, string reason, ImmutableArray<TriedChange> tried) =>
        (Stage, Verdict, IsAssumed, Reason, Tried) = (stage, verdict, isAssumed, reason, tried);

    /// <summary>Name of the stage.</summary>
    public string Stage { get; }

    /// <summary>Whether it lights.</summary>
    public Verdict Verdict { get; }

    /// <summary>
    /// Whether its ignition is taken for granted and not computed: by electronics that no guard refuses, by motors in
    /// contact after a stated lag, or by a gap model of somebody else.
    /// </summary>
    public bool IsAssumed { get; }

    /// <summary>What decided the nominal case, with its numbers.</summary>
    public string Reason { get; }

    /// <summary>
    /// Changes that were run, each with its result, for a gap whose nominal case stays cold or lights only after the
    /// joint opened; empty otherwise.
    /// </summary>
    public ImmutableArray<TriedChange> Tried { get; }

    /// <summary>Whether it lit in the nominal case.</summary>
    internal bool LightsNominally { get; init; }

    /// <summary>In how many cases it lit; null where no odds were asked for, or nothing is judged.</summary>
    internal Proportion? Lit { get; init; }

    /// <summary>The stage, the verdict and the reason.</summary>
    /// <returns>For example <c>sustainer stays cold: The gap peaked at 224 kPa gauge...</c>.</returns>
    public override string ToString() => $"{Stage} {VerdictText.Words(Verdict)}{(IsAssumed ? ", assumed" : "")}: {Reason}";
}
