namespace Staging.Core.Flight;

/// <summary>What a branch makes go wrong: the stage that stays cold, and whether the pieces part all the same.</summary>
internal readonly record struct BranchOrder(int ColdStage, bool Parts)
{
    /// <summary>The nominal flight: nothing is made to go wrong.</summary>
    public static BranchOrder None { get; } = new(-1, false);
}
