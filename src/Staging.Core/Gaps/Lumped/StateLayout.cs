namespace Staging.Core.Gaps;

/// <summary>Where each number of the state vector stands.</summary>
/// <remarks>
/// Four running totals that close the ledgers, the joint, and stirred parcels of (products, air, energy): of the gap,
/// and then of as many chambers and jackets as the problem has. Shares of what burns, ways of pieces and layers of tape
/// follow: see <see cref="GapParameters"/>. Nothing depends on the totals, nor on the joint while it rests; they stand
/// first, where eliminating them from the matrix of an implicit step takes no work.
/// </remarks>
internal static class StateLayout
{
    /// <summary>Mass that sources have given so far [kg].</summary>
    public const int Burnt = 0;

    /// <summary>Enthalpy that came with it [J].</summary>
    public const int BurntEnergy = 1;

    /// <summary>Net mass that has left chambers, gap and jackets [kg].</summary>
    public const int MassOut = 2;

    /// <summary>Net energy that has left as enthalpy, wall heat and work on the joint [J].</summary>
    public const int EnergyOut = 3;

    /// <summary>Travel of the joint [m].</summary>
    public const int Slide = 4;

    /// <summary>Speed of the joint [m/s].</summary>
    public const int SlideSpeed = 5;

    /// <summary>Where the parcels begin.</summary>
    public const int FirstParcel = 6;

    /// <summary>Products behind the front; in the stirred model everything up to the last vent.</summary>
    public const int Hot = FirstParcel;

    /// <summary>Air ahead of the front; unused in the stirred model.</summary>
    public const int Cold = Hot + Parcel;

    public const int DeadEnd = Cold + Parcel;

    /// <summary>Where the parcels of chambers begin, and those of jackets after them.</summary>
    public const int FirstChamber = DeadEnd + Parcel;

    /// <summary>Numbers of a parcel.</summary>
    public const int Parcel = 3;

    /// <summary>
    /// The two gases of a parcel are parts of one whole: how much of either there is matters beside the other. Without
    /// that, steps would follow every trace of air in a chamber as it doubles. Behind the front each counts by itself:
    /// air that wide vents let in and out at equal pressures is a trace there, and its errors would add up.
    /// </summary>
    public static int[] Mates(GapParameters p)
    {
        int[] mates = [.. Enumerable.Range(0, p.StateCount)];
        for (int at = Cold; at < p.FirstShare; at += Parcel)
            (mates[at], mates[at + 1]) = (at + 1, at);
        return mates;
    }
}
