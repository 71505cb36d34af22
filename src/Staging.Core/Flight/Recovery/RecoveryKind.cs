namespace Staging.Core.Flight;

/// <summary>What slows a body that comes down.</summary>
internal enum RecoveryKind
{
    /// <summary>A parachute.</summary>
    Parachute,

    /// <summary>A streamer.</summary>
    Streamer,

    /// <summary>Its own tumbling.</summary>
    Tumbling,

    /// <summary>Nothing.</summary>
    Ballistic,
}
