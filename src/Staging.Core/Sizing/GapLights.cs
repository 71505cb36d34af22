using Staging.Core.Gaps;

namespace Staging.Core.Sizing;

/// <summary>What a search for vents, lengths and joints counts.</summary>
internal static class GapLights
{
    /// <summary>
    /// Whether the upper motor is lit before the stages part; null for a run that was not solved, which is neither.
    /// </summary>
    public static bool? Lights(this GapOutcome outcome) => outcome is GapOutcome.NotSolved ? null : outcome.IsLitBeforeParting;
}
