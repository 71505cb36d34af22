using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>Equal trapezoidal fins, evenly spaced around the body.</summary>
public sealed record FinGroup
{
    /// <summary>
    /// Number of fins, 3, 4 or 6: the numbers for which J. S. Barrowman (1967) gives the interference factor.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Another number.</exception>
    public required int Count
    {
        get;
        init => field = value is 3 or 4 or 6
            ? value
            : throw new ArgumentOutOfRangeException(nameof(Count), value, $"Count is {value}; it must be 3, 4 or 6.");
    }

    /// <summary>Chord at the body [m], 1 mm to 5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RootChord { get; init => field = Guard.In(value, 1e-3, 5); }

    /// <summary>Chord at the tip [m], 0 to 5 m; zero is a pointed fin.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length TipChord { get; init => field = Guard.In(value, 0, 5); }

    /// <summary>Span of one fin, from the body surface to the fin tip [m], 1 mm to 5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Span { get; init => field = Guard.In(value, 1e-3, 5); }

    /// <summary>
    /// Distance of the leading edge at the tip behind that at the root [m], negative for forward sweep, -5 m to 5 m.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Sweep { get; init => field = Guard.In(value, -5, 5); }

    /// <summary>Thickness [m], 0.1 mm to 0.2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Thickness { get; init => field = Guard.In(value, 1e-4, 0.2); }

    /// <summary>
    /// Whether the leading edge is round; otherwise it is cut square, with the stagnation pressure acting on it.
    /// </summary>
    public required bool RoundLeadingEdge { get; init; }

    /// <summary>
    /// Whether the trailing edge is tapered to a thin edge, without base drag; otherwise it is cut square, with
    /// base suction acting on it.
    /// </summary>
    public required bool TaperedTrailingEdge { get; init; }

    /// <summary>Station of the leading edge at the root, from the nose tip [m], 0 to 100 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Station { get; init => field = Guard.In(value, 0, 100); }

    /// <summary>Diameter of the body at the fins [m], 1 mm to 2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length BodyDiameter { get; init => field = Guard.In(value, 1e-3, 2); }

    /// <summary>Area of one side of one fin [m2].</summary>
    public Area PlanformArea => Area.FromSquareMeters(0.5 * (RootChord.Meters + TipChord.Meters) * Span.Meters);
}
