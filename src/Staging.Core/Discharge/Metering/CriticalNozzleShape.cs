namespace Staging.Core.Discharge;

/// <summary>Shape of a critical-flow nozzle; ISO 9300:2005.</summary>
public enum CriticalNozzleShape
{
    /// <summary>Toroidal throat, ordinary finish.</summary>
    Toroidal,

    /// <summary>Toroidal throat, accurately machined.</summary>
    AccurateToroidal,

    /// <summary>Cylindrical throat of one diameter behind a quarter-round inlet.</summary>
    Cylindrical,
}
