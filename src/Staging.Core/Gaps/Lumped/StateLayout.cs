namespace Staging.Core.Gaps;

/// <summary>Where each number of the state vector stands.</summary>
/// <remarks>
/// Stirred parcels of (products, air, energy), the joint, and four running totals that close the ledgers. They are
/// followed by as many chambers, jackets, burning fragments and layers of tape as the problem has: see
/// <see cref="GapParameters"/>.
/// </remarks>
internal static class StateLayout
{
    /// <summary>Products behind the front; in the stirred model everything up to the last vent.</summary>
    public const int Hot = 0;

    /// <summary>Air ahead of the front; unused in the stirred model.</summary>
    public const int Cold = 3;

    public const int DeadEnd = 6;

    /// <summary>Travel of the joint [m].</summary>
    public const int Slide = 9;

    /// <summary>Speed of the joint [m/s].</summary>
    public const int SlideSpeed = 10;

    /// <summary>Mass that sources have given so far [kg].</summary>
    public const int Burnt = 11;

    /// <summary>Enthalpy that came with it [J].</summary>
    public const int BurntEnergy = 12;

    /// <summary>Net mass that has left chambers, gap and jackets [kg].</summary>
    public const int MassOut = 13;

    /// <summary>Net energy that has left as enthalpy, wall heat and work on the joint [J].</summary>
    public const int EnergyOut = 14;

    /// <summary>Numbers that every gap has.</summary>
    public const int Fixed = 15;

    /// <summary>Numbers of a parcel.</summary>
    public const int Parcel = 3;
}
