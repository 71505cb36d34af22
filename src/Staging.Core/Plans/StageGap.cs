using Staging.Core.Flight;

namespace Staging.Core.Plans;

/// <summary>From a stage to the gap below it.</summary>
internal static class StageGap
{
    /// <summary>The gap that lights a stage, where this library answers for it.</summary>
    public static GapIgnition? Gap(this Stage stage) => (stage.Ignition as StageIgnition.ByGap)?.Gap as GapIgnition;
}
