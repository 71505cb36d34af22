namespace Staging.Core.Flight;

/// <summary>The kind of failure in a failure case.</summary>
public enum FailureKind
{
    /// <summary>The motor stays cold and the stages stay joined: the heaviest body falls, usually nose first.</summary>
    UnlitAndJoined,

    /// <summary>The motor stays cold and the stages part nevertheless.</summary>
    UnlitAndParted,

    /// <summary>
    /// The motor lights, but late by <see cref="FlightOptions.LateIgnition"/>; the stages part when they would have, or
    /// with the ignition where that parts them.
    /// </summary>
    LitLate,

    /// <summary>The recovery device of the uppermost stage is never deployed.</summary>
    EjectionFailure,
}
