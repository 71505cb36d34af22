using Staging.Core.Gaps;

namespace Staging.Core.Sizing;

/// <summary>One thing that is not known of a gap, with the two ends of what it may be.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Low">Its low end in words.</param>
/// <param name="High">Its high end in words.</param>
/// <param name="AtLow">Puts the low end into a gap.</param>
/// <param name="AtHigh">Puts the high end into a gap.</param>
internal sealed record BracketUnknown(
    string Name, string Low, string High, Func<GapProblem, GapProblem> AtLow, Func<GapProblem, GapProblem> AtHigh);
