using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// A volume round the guide tube, such as the space between two nested tubes: stirred, at its own pressure, with holes
/// that lead on. Holes of the tube lead into it where a <see cref="Vent"/> names it.
/// </summary>
public sealed record Jacket
{
    /// <summary>Its name; unique within a design.</summary>
    public required string Name { get; init => field = Guard.NotBlank(value); }

    /// <summary>Free volume [m3], 1 mm3 to 1 m3.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Volume Volume { get; init => field = Guard.In(value, 1e-9, 1); }

    /// <summary>Wall that takes up heat [m2], 0 to 10.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Area WallArea { get; init => field = Guard.In(value, 0, 10); }

    /// <summary>
    /// Bore of the tube that is its outer wall [m], 2 mm to 500 mm: where holes of that wall are marked depends on it,
    /// what the gas does does not. Null, the default, where it is not stated.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length? OuterBore
    {
        get;
        init => field = value is { } bore ? Guard.In(bore, 0.002, 0.5) : null;
    }

    /// <summary>
    /// Holes out of it: through its outer wall, or rearwards through a centring ring; an empty list is a pocket without
    /// a way out.
    /// </summary>
    public required EquatableArray<JacketOpening> Openings { get; init; }

    /// <summary>The ring-shaped space between two tubes.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="innerDiameter">Outer diameter of the inner tube [m], 2 mm to 300 mm.</param>
    /// <param name="outerBore">Bore of the outer tube [m], above the inner diameter, to 500 mm.</param>
    /// <param name="length">Length between the rings that close it [m], 1 mm to 5 m.</param>
    /// <param name="openings">Holes out of it.</param>
    /// <returns>The jacket.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static Jacket Between(string name, Length innerDiameter, Length outerBore, Length length,
        params ReadOnlySpan<JacketOpening> openings)
    {
        double inner = Guard.In(innerDiameter, 0.002, 0.3, nameof(innerDiameter)).Meters;
        double outer = Guard.Above(outerBore.Meters, inner, 0.5, "m", nameof(outerBore));
        double along = Guard.In(length, 0.001, 5, nameof(length)).Meters;
        double ring = Math.PI / 4 * (outer * outer - inner * inner);
        return new Jacket
        {
            Name = name,
            Volume = Volume.FromCubicMeters(ring * along),
            WallArea = Area.FromSquareMeters(Math.PI * (inner + outer) * along + 2 * ring),
            OuterBore = outerBore,
            Openings = [.. openings],
        };
    }
}
