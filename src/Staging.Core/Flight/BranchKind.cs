namespace Staging.Core.Flight;

/// <summary>What goes wrong in a branch.</summary>
public enum BranchKind
{
    /// <summary>The motor stays cold and the pieces stay joined: the heaviest body falls, usually nose first.</summary>
    UnlitAndJoined,

    /// <summary>The motor stays cold and the pieces part all the same.</summary>
    UnlitAndParted,
}
