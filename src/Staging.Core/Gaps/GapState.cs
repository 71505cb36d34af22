namespace Staging.Core.Gaps;

/// <summary>Where each number of the state vector stands.</summary>
/// <remarks>Four stirred parcels of (products, air, energy), the joint, and three running totals that close the ledgers.</remarks>
internal static class GapState
{
    public const int Chamber = 0;
    public const int Hot = 3;
    public const int Cold = 6;
    public const int DeadEnd = 9;

    /// <summary>Travel of the joint [m].</summary>
    public const int Slide = 12;

    /// <summary>Speed of the joint [m/s].</summary>
    public const int SlideSpeed = 13;

    /// <summary>Mass of fragments burnt so far [kg].</summary>
    public const int Burnt = 14;

    /// <summary>Net mass that has left chamber and gap [kg].</summary>
    public const int MassOut = 15;

    /// <summary>Net energy that has left as enthalpy, wall heat and work on the joint [J].</summary>
    public const int EnergyOut = 16;

    public const int Count = 17;

    /// <summary>Mass and energy of all parcels.</summary>
    public static GapTotals TotalsOf(ReadOnlySpan<double> y)
    {
        double mass = 0, energy = 0;
        for (int zone = 0; zone < Slide; zone += 3)
        {
            mass += y[zone] + y[zone + 1];
            energy += y[zone + 2];
        }

        return new GapTotals(mass, energy);
    }
}
