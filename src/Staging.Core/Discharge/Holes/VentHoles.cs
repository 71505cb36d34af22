using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>Round holes of one size through one wall.</summary>
public sealed record VentHoles
{
    /// <summary>Diameter of one hole [m], 0.1 mm to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Diameter { get; init => field = Guard.In(value, 1e-4, 0.1); }

    /// <summary>Wall thickness [m], 0.01 mm to 50 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length WallThickness { get; init => field = Guard.In(value, 1e-5, 0.05); }

    /// <summary>Number of holes, 1 to 1000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required int Count { get; init => field = Guard.In(value, 1, 1000); }

    /// <summary>Area of all holes together.</summary>
    public Area TotalArea => Area.FromSquareMeters(Count * Math.PI / 4 * Diameter.Meters * Diameter.Meters);

    /// <summary>The single hole that passes a given flow between two gases at rest.</summary>
    /// <param name="flow">The mass flow, with its sign, positive from one to two.</param>
    /// <param name="one">Gas on side one.</param>
    /// <param name="two">Gas on side two.</param>
    /// <param name="law">The law of the single hole.</param>
    /// <param name="wallThickness">Wall of the single hole [m], 0.01 mm to 50 mm.</param>
    /// <returns>One hole, 0.1 mm to 100 mm across, and no smaller than the law accepts for this wall.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// No such hole passes this flow (the message gives what the smallest and the largest pass), or the flow
    /// opposes the pressure difference, or the wall is too thick for the law at any of these diameters.
    /// </exception>
    /// <exception cref="ArgumentException">Equal pressures.</exception>
    public static VentHoles ForFlow(MassFlow flow, GasState one, GasState two, IDischargeLaw law, Length wallThickness)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(two);
        ArgumentNullException.ThrowIfNull(law);
        double wall = Guard.In(wallThickness, 1e-5, 0.05, nameof(wallThickness)).Meters;
        double diameter = EquivalentHole.DiameterFor(flow.KilogramsPerSecond, Orifice.ToSi(one), Orifice.ToSi(two), law, wall);
        return new VentHoles { Diameter = Length.FromMeters(diameter), WallThickness = wallThickness, Count = 1 };
    }

    /// <summary>
    /// Area of one hole equivalent to several in series by the incompressible rule 1/A^2 = sum 1/A_i^2, all with one
    /// coefficient. A first guess: low by 2 % at a pressure ratio of 0.9 and by 12 % for two equal holes that choke.
    /// </summary>
    /// <param name="areas">The areas in series, at least one; each [m2] 1e-12 to 1e4.</param>
    /// <returns>The area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An area is outside the range.</exception>
    /// <exception cref="ArgumentException">No area.</exception>
    public static Area IncompressibleSeries(params EquatableArray<Area> areas) => areas.IsEmpty
        ? throw new ArgumentException("There is no area; give at least one.", nameof(areas))
        : Area.FromSquareMeters(1 / Math.Sqrt(areas.Sum(a => Math.Pow(Guard.In(a, 1e-12, 1e4, nameof(areas)).SquareMeters, -2))));
}
