using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>Where the mass of the stack went.</summary>
/// <param name="AtStart">Mass on the guide [kg].</param>
/// <param name="Burnt">Propellant burnt, from the impulse delivered [kg].</param>
/// <param name="AtEnd">Mass of all bodies at the end of their records [kg].</param>
public sealed record MassLedger(Mass AtStart, Mass Burnt, Mass AtEnd)
{
    /// <summary>What is not accounted for, over the mass at the start [-]; round-off.</summary>
    public double Residual => (AtStart.Kilograms - Burnt.Kilograms - AtEnd.Kilograms) / AtStart.Kilograms;
}
