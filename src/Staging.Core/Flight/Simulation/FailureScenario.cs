namespace Staging.Core.Flight;

/// <summary>The failure of a failure case, and the stage concerned.</summary>
/// <param name="Stage">Index of the stage; -1 in the nominal flight.</param>
/// <param name="Kind">What goes wrong.</param>
/// <param name="Delay">How much later than it should the motor lights [s].</param>
internal readonly record struct FailureScenario(int Stage, FailureKind Kind, double Delay)
{
    /// <summary>The nominal flight: no failure.</summary>
    public static FailureScenario None { get; } = new(-1, FailureKind.UnlitAndJoined, 0);

    /// <summary>Whether a stage is made to stay cold.</summary>
    public bool Cold(int stage) => stage == Stage && Kind is (FailureKind.UnlitAndJoined or FailureKind.UnlitAndParted);

    /// <summary>Whether the stages part although the motor of a stage stays cold.</summary>
    public bool Parts(int stage) => stage == Stage && Kind == FailureKind.UnlitAndParted;

    /// <summary>Delay of the ignition of a stage [s].</summary>
    public double Late(int stage) => stage == Stage && Kind == FailureKind.LitLate ? Delay : 0;

    /// <summary>Whether the device of a stage is not deployed.</summary>
    public bool Stuck(int stage) => stage == Stage && Kind == FailureKind.EjectionFailure;
}
