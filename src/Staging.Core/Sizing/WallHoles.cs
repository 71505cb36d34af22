using Staging.Core.Discharge;

namespace Staging.Core.Sizing;

/// <summary>Holes to drill in one wall.</summary>
public sealed class WallHoles
{
    /// <summary>Name of the inner wall.</summary>
    internal const string GuideTube = "guide tube";

    internal WallHoles(string wall, HolePattern pattern, DrilledHoles? drilled) => (Wall, Pattern, Drilled) = (wall, pattern, drilled);

    /// <summary>The wall: "guide tube", or the name of the jacket whose outer wall it is.</summary>
    public string Wall { get; }

    /// <summary>
    /// The exact holes with the drills next to them; those of a jacket with holes in several places are summed up here.
    /// </summary>
    public HolePattern Pattern { get; }

    /// <summary>The drill to take, the nearer of the two that fit; null where the series has none that fits.</summary>
    public DrilledHoles? Drilled { get; }

    /// <summary>What to drill, on one line.</summary>
    /// <returns>For example <c>guide tube: 4 holes, drill 5.5 mm (exact 5.63 mm)</c>.</returns>
    public override string ToString() => Drilled is { } drilled
        ? Invariant.Text(
            $"{Wall}: {drilled.Holes.Count} holes, drill {drilled.Drill.Label} (exact {Pattern.Exact.Diameter.Millimeters:F2} mm)")
        : Invariant.Text($"{Wall}: {Pattern.Exact.Count} holes of {Pattern.Exact.Diameter.Millimeters:F2} mm");
}
