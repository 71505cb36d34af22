using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>Where the air holds an airframe at small angles of attack, below the speed of sound.</summary>
/// <param name="Slope">C_N,alpha of the whole on the largest cross-section [1/rad].</param>
/// <param name="CentreOfPressure">Centre of pressure of the whole, from the nose tip [m].</param>
/// <param name="Diameter">Largest diameter, the calibre [m].</param>
/// <param name="Parts">The contributions, fore to aft, fins last.</param>
public sealed record StabilityReport(double Slope, Length CentreOfPressure, Length Diameter, ImmutableArray<NormalForce> Parts)
{
    /// <summary>
    /// Static margin: how far the centre of pressure lies behind the centre of gravity, in calibres; 1 to 2 is usual
    /// practice.
    /// </summary>
    /// <param name="centreOfGravity">Centre of gravity from the nose tip [m].</param>
    /// <returns>Margin in largest diameters [-]; negative is unstable.</returns>
    public double Margin(Length centreOfGravity) => (CentreOfPressure.Meters - centreOfGravity.Meters) / Diameter.Meters;
}
