using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Something that happened in a gap run.</summary>
/// <remarks>Immutable; may be read from any thread.</remarks>
public sealed class GapEvent
{
    internal GapEvent(GapEventKind kind, double time) => (Kind, Time) = (kind, Duration.FromSeconds(time));

    /// <summary>What.</summary>
    public GapEventKind Kind { get; }

    /// <summary>When, on the clock that starts at burn-through.</summary>
    public Duration Time { get; }

    /// <summary>What and when.</summary>
    /// <returns>For example <c>JointMoves at 4.21 ms</c>.</returns>
    public override string ToString() => Invariant.Text($"{Kind} at {Time.Milliseconds:F2} ms");
}
