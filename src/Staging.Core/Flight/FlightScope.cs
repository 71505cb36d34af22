namespace Staging.Core.Flight;

/// <summary>The bodies and cases that a flight run follows.</summary>
public enum FlightScope
{
    /// <summary>Every body to the ground, and every failure case.</summary>
    Everything,

    /// <summary>Every body of the nominal flight to the ground; no failure cases.</summary>
    AllBodies,

    /// <summary>The uppermost stage alone, from the guide to its landing: for studies of apogee or speed.</summary>
    UppermostStage,
}
