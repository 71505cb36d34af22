namespace Staging.Core.Flight;

/// <summary>What goes wrong in a failure case.</summary>
public enum FailureKind
{
    /// <summary>The motor stays cold and the stages stay joined: the heaviest body falls, usually nose first.</summary>
    UnlitAndJoined,

    /// <summary>The motor stays cold and the stages part all the same.</summary>
    UnlitAndParted,

    /// <summary>
    /// The motor lights, but late by <see cref="FlightOptions.LateIgnition"/>; the stages part when they would have.
    /// </summary>
    LitLate,

    /// <summary>The recovery device of the uppermost stage never comes out.</summary>
    EjectionFailure,
}
