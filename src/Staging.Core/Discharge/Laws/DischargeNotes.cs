namespace Staging.Core.Discharge;

/// <summary>In what way an evaluation lies outside the range that the source of a discharge law vouches for.</summary>
[Flags]
public enum DischargeNotes
{
    /// <summary>Inside the range.</summary>
    None = 0,

    /// <summary>The downstream pressure is a smaller part of the upstream one than the law was found for.</summary>
    PressureRatioBelowRange = 1,

    /// <summary>The wall is too thin for the law, measured in hole diameters.</summary>
    WallThinnerThanRange = 2,

    /// <summary>The wall is too thick for the law, measured in hole diameters.</summary>
    WallThickerThanRange = 4,
}
