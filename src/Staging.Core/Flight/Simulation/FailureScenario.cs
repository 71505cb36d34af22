namespace Staging.Core.Flight;

/// <summary>What a failure case makes go wrong, and with which stage.</summary>
/// <param name="Stage">Index of the stage; -1 in the nominal flight.</param>
/// <param name="Kind">What goes wrong.</param>
/// <param name="Delay">How much later than it should the motor lights [s].</param>
internal readonly record struct FailureScenario(int Stage, FailureKind Kind, double Delay)
{
    /// <summary>The nominal flight: nothing is made to go wrong.</summary>
    public static FailureScenario None { get; } = new(-1, FailureKind.UnlitAndJoined, 0);

    /// <summary>Whether a stage is made to stay cold.</summary>
    public bool Cold(int stage) => stage == Stage && Kind is (FailureKind.UnlitAndJoined or FailureKind.UnlitAndParted);

    /// <summary>Whether the stages part although the motor of a stage stays cold.</summary>
    public bool Parts(int stage) => stage == Stage && Kind == FailureKind.UnlitAndParted;

    /// <summary>How much later than it should a stage lights [s].</summary>
    public double Late(int stage) => stage == Stage && Kind == FailureKind.LitLate ? Delay : 0;

    /// <summary>Whether the device of a stage stays in.</summary>
    public bool Stuck(int stage) => stage == Stage && Kind == FailureKind.EjectionFailure;
}
