namespace Staging.Core.Gaps;

/// <summary>What holds between two known times or joint events: the right-hand side is smooth in between.</summary>
/// <param name="Joint">What the joint does.</param>
/// <param name="Start">Start of the phase [s]: chambers that have burnt through by then flow.</param>
/// <param name="Stop">Known time at which it ends at the latest [s].</param>
/// <param name="FeedPiece">Piece of the feed table; -1 where nothing is fed.</param>
/// <param name="LeastAhead">Energy of the air ahead of the front at which it counts as spent [J].</param>
internal readonly record struct GapPhase(JointPhase Joint, double Start, double Stop, int FeedPiece, double LeastAhead = 0)
{
    /// <summary>Whether the joint moves, or has moved apart.</summary>
    public bool Moves => Joint != JointPhase.Held;
}
