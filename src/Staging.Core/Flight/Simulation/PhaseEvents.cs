namespace Staging.Core.Flight;

/// <summary>The events watched during a stretch of flight.</summary>
internal enum PhaseEvents
{
    /// <summary>The end of the guide, or sliding back.</summary>
    Guide,

    /// <summary>Apogee, or the top of the atmosphere.</summary>
    Rising,

    /// <summary>The ground.</summary>
    Falling,
}
