using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>A total area divided over N equal holes: the exact diameter, and the drills next to it.</summary>
public sealed class HolePattern
{
    private HolePattern(VentHoles exact, DrilledHoles? below, DrilledHoles? above) => (Exact, Below, Above) = (exact, below, above);

    /// <summary>Holes of the exact diameter.</summary>
    public VentHoles Exact { get; }

    /// <summary>The nearest drill that is not larger; null when every drill of the series is larger.</summary>
    public DrilledHoles? Below { get; }

    /// <summary>The nearest drill that is not smaller; null when every drill of the series is smaller.</summary>
    public DrilledHoles? Above { get; }

    /// <summary>Divides a total area.</summary>
    /// <param name="total">Total area of all holes [m2]; it must give holes from 0.1 mm to 100 mm.</param>
    /// <param name="count">Number of holes, 1 to 1000.</param>
    /// <param name="wallThickness">Wall thickness [m], 0.01 mm to 50 mm.</param>
    /// <param name="drills">The drills available.</param>
    /// <returns>The pattern.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or the diameter of one hole, outside its
    /// range.</exception>
    public static HolePattern ForArea(Area total, int count, Length wallThickness, DrillSeries drills)
    {
        Guard.In(count, 1, 1000, nameof(count));
        Guard.In(total, 1e-9, 10, nameof(total));
        Guard.Defined(drills, nameof(drills));
        var exact = new VentHoles
        {
            Diameter = Length.FromMeters(Math.Sqrt(4 * total.SquareMeters / (Math.PI * count))),
            WallThickness = wallThickness,
            Count = count,
        };
        return new HolePattern(exact, Drilled(DrillSize.Below(drills, exact.Diameter), exact),
            Drilled(DrillSize.Above(drills, exact.Diameter), exact));
    }

    /// <summary>Number and diameter, and the drills next to it.</summary>
    /// <returns>For example <c>4 holes of 2.93 mm: 2.9 mm (-2.0 %) or 3.0 mm (+4.8 %)</c>.</returns>
    public override string ToString() => Invariant.Text($"{Exact.Count} holes of {Exact.Diameter.Millimeters:G3} mm: ")
        + string.Join(" or ", new[] { Below, Above }.OfType<DrilledHoles>());

    private static DrilledHoles? Drilled(DrillSize? drill, VentHoles exact) => drill is null ? null : new DrilledHoles(
        drill,
        exact with { Diameter = drill.Diameter },
        Math.Pow(drill.Diameter / exact.Diameter, 2) - 1);
}
