namespace Staging.Core.Flight;

/// <summary>What a branch makes go wrong, and with which stage.</summary>
/// <param name="Stage">Index of the stage; -1 in the nominal flight.</param>
/// <param name="Kind">What goes wrong.</param>
/// <param name="Delay">How much later than it should the motor lights [s].</param>
internal readonly record struct BranchOrder(int Stage, BranchKind Kind, double Delay)
{
    /// <summary>The nominal flight: nothing is made to go wrong.</summary>
    public static BranchOrder None { get; } = new(-1, BranchKind.UnlitAndJoined, 0);

    /// <summary>Whether a stage is made to stay cold.</summary>
    public bool Cold(int stage) => stage == Stage && Kind is (BranchKind.UnlitAndJoined or BranchKind.UnlitAndParted);

    /// <summary>Whether the pieces part although the motor of a stage stays cold.</summary>
    public bool Parts(int stage) => stage == Stage && Kind == BranchKind.UnlitAndParted;

    /// <summary>How much later than it should a stage lights [s].</summary>
    public double Late(int stage) => stage == Stage && Kind == BranchKind.LitLate ? Delay : 0;

    /// <summary>Whether the device of a stage stays in.</summary>
    public bool Stuck(int stage) => stage == Stage && Kind == BranchKind.NothingEjected;
}
