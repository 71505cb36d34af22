using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>
/// Normal force of an airframe, or of one part of it, at small angles of attack and below the speed of sound, and where
/// it acts.
/// </summary>
public sealed class NormalForce
{
    private readonly double diameter;

    internal NormalForce(string name, double slope, double centre, double diameter, ImmutableArray<NormalForce> parts)
    {
        (Name, Slope, CentreOfPressure, Parts) = (name, slope, Length.FromMeters(centre), parts);
        this.diameter = diameter;
    }

    /// <summary>The part on which it acts: <c>airframe</c>, <c>nose</c>, <c>transition 2</c>, <c>fins 1</c>.</summary>
    public string Name { get; }

    /// <summary>Normal force coefficient per radian on the largest cross-section, C_N,alpha [1/rad].</summary>
    public double Slope { get; }

    /// <summary>Station from the nose tip where it acts [m].</summary>
    public Length CentreOfPressure { get; }

    /// <summary>The contributions, fore to aft, fins last; empty for a part.</summary>
    public ImmutableArray<NormalForce> Parts { get; }

    /// <summary>
    /// Static margin: how far the centre of pressure lies behind the centre of gravity, in calibres (largest
    /// diameters); 1 to 2 is usual practice.
    /// </summary>
    /// <param name="centreOfGravity">Centre of gravity from the nose tip [m].</param>
    /// <returns>Margin in largest diameters [-]; negative is unstable.</returns>
    public double Margin(Length centreOfGravity) => (CentreOfPressure.Meters - centreOfGravity.Meters) / diameter;

    /// <summary>The force on one line.</summary>
    /// <returns>Name, slope and centre of pressure.</returns>
    public override string ToString() =>
        Invariant.Text($"{Name}: C_N,alpha {Slope:F3} a radian at {CentreOfPressure.Millimeters:F1} mm from the nose tip");
}
