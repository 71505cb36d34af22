using System.Collections.Immutable;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>One corner of a bracket: every unknown at one of its ends.</summary>
public sealed class BracketCase
{
    internal BracketCase(ImmutableArray<string> ends, GapRun run)
    {
        (Ends, Outcome, PeakGaugePressure) = (ends, run.Outcome, run.PeakGaugePressure);
        JointOpens = run.TimeOf(GapEventKind.JointOpens);
    }

    /// <summary>The end of each unknown, in the order of <see cref="GapBracket.Unknowns"/>.</summary>
    public ImmutableArray<string> Ends { get; }

    /// <summary>How the run ended.</summary>
    public GapOutcome Outcome { get; }

    /// <summary>Highest gap pressure above the outside.</summary>
    public Pressure PeakGaugePressure { get; }

    /// <summary>
    /// When the joint opened; null when it held, or had not opened where a run that was not solved ended.
    /// </summary>
    public Duration? JointOpens { get; }

    /// <summary>Whether the run came to an answer.</summary>
    internal bool IsSolved => Outcome is not GapOutcome.NotSolved;

    /// <summary>Ends and outcome on one line.</summary>
    /// <returns>For example <c>never lit, slow, 0.6, 650 K: Lit, 17.9 ms</c>.</returns>
    public override string ToString() =>
        Invariant.Text($"{string.Join(", ", Ends)}: {Outcome.GetType().Name}, {Outcome.Time.Milliseconds:F1} ms");
}
