using System.Collections.Immutable;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>
/// What to build: vent area, holes in every wall, where they go, and how far the joint should engage.
/// </summary>
/// <remarks>
/// It is as good as the source, the joint and the grain that it was computed from, which are uncertain by tens of per
/// cent. Local codes, the range safety officer and licensed practice decide; plan for a stage that does not light.
/// </remarks>
public sealed record GapRecommendation
{
    internal GapRecommendation()
    {
    }

    /// <summary>The areas that were tried, the intervals that light, and the area asked for with its reason.</summary>
    public required VentAdvice Advice { get; init; }

    /// <summary>Holes for every wall on the way out, the guide tube first; empty when no area lights.</summary>
    public required ImmutableArray<WallHoles> Walls { get; init; }

    /// <summary>
    /// Distance of the centres of the guide tube's holes from the booster motor's forward end; null when no area
    /// lights.
    /// </summary>
    public required Length? Station { get; init; }

    /// <summary>
    /// Shortest engagement of the joint that lights with those holes and leaves the asked margin to separation, to the
    /// next half millimetre; null when no area lights, or no engagement up to 500 mm holds.
    /// </summary>
    public required Length? Engagement { get; init; }

    /// <summary>
    /// The margin to separation that was asked: half of the time to ignition; null when no area lights.
    /// </summary>
    public required Duration? Margin { get; init; }

    /// <summary>The run with the drilled holes and that engagement; null when there is nothing to build.</summary>
    public required GapRun? Run { get; init; }

    /// <summary>All of it in words.</summary>
    public required string Text { get; init; }
}
