namespace Staging.Core.Flight;

/// <summary>The kind of recovery of a body.</summary>
internal enum RecoveryKind
{
    /// <summary>A parachute.</summary>
    Parachute,

    /// <summary>A streamer.</summary>
    Streamer,

    /// <summary>Tumbling without a device.</summary>
    Tumbling,

    /// <summary>Nothing.</summary>
    Ballistic,
}
