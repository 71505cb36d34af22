namespace Staging.Core.Discharge;

/// <summary>Where an orifice plate takes its two pressures; ISO 5167-2:2003, 5.2.</summary>
public enum PressureTappings
{
    /// <summary>In the corners between plate and pipe.</summary>
    Corner,

    /// <summary>One pipe diameter before and half a diameter behind the upstream face.</summary>
    DAndHalfD,

    /// <summary>25.4 mm before and behind the faces.</summary>
    Flange,
}
