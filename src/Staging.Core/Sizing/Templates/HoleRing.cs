using System.Collections.Immutable;
using Staging.Core.Discharge;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>Equal holes at one station of a wall, evenly round it.</summary>
public sealed class HoleRing
{
    /// <summary>Angles that differ by less are one place [rad].</summary>
    private const double SameAngle = 1e-9;

    /// <summary>Lengths in m, the first angle in radians; null what the design does not say.</summary>
    internal HoleRing(VentHoles holes, DrillSeries? drills, double? station, double first, double? outerDiameter, double? land)
    {
        (Count, Diameter, Drill) = (holes.Count, holes.Diameter, DrillSize.Of(holes.Diameter, drills));
        double between = 2 * Math.PI / Count, start = first % between;
        if (between - start < SameAngle)
            start = 0;
        double[] angles = [.. Enumerable.Range(0, Count).Select(i => start + i * between)];
        (AngleBetween, Angles) = (Rounded(between), [.. angles.Select(Rounded)]);
        Station = station is { } s ? Millimetres(s) : null;
        Land = land is { } l ? Millimetres(l) : null;
        Pitch = outerDiameter is { } round ? Millimetres(Math.PI * round / Count) : null;
        Arcs = outerDiameter is { } d ? [.. angles.Select(a => Millimetres(0.5 * d * a))] : [];
    }

    /// <summary>
    /// Distance of the hole centres from the forward face of the booster motor, station 0; null where the design does
    /// not say where the holes are.
    /// </summary>
    public Length? Station { get; }

    /// <summary>Number of holes.</summary>
    public int Count { get; }

    /// <summary>Diameter of one hole.</summary>
    public Length Diameter { get; }

    /// <summary>The drill of that diameter; null where no series has one.</summary>
    public DrillSize? Drill { get; }

    /// <summary>Angle from one hole to the next.</summary>
    public Angle AngleBetween { get; }

    /// <summary>
    /// Place of each hole round the tube, from a line along it: to the right as you look at the tube from outside, nose
    /// up.
    /// </summary>
    public ImmutableArray<Angle> Angles { get; }

    /// <summary>
    /// The same places along the outside of the tube, as a tape would measure them; empty where its diameter is not
    /// known.
    /// </summary>
    public ImmutableArray<Length> Arcs { get; }

    /// <summary>From centre to centre round the outside; null where the diameter of the tube is not known.</summary>
    public Length? Pitch { get; }

    /// <summary>
    /// Least wall between a hole of this ring and the next hole, of this ring or another, along the outside; negative
    /// where holes overlap, null where diameter or station is not known.
    /// </summary>
    public Length? Land { get; }

    /// <summary>What to drill, on one line.</summary>
    /// <returns>
    /// For example <c>2 x drill 5.0 mm at station 116.5 mm, every 180.0 deg = 29.85 mm round, land 24.79 mm</c>.
    /// </returns>
    public override string ToString() => Text("");

    /// <summary>The same with a remark behind the station.</summary>
    internal string Text(string remark)
    {
        string drill = Drill is null ? Invariant.Text($"{Diameter.Millimeters:F2} mm (no standard drill)") : $"drill {Drill}";
        string station = Station is { } at ? Invariant.Text($"station {at.Millimeters:0.0#} mm") : "a place not stated";
        string around = Count == 1 ? "" : Invariant.Text($", every {AngleBetween.Degrees:F1} deg")
            + (Pitch is { } pitch ? Invariant.Text($" = {pitch.Millimeters:F2} mm round") : "");
        if (Angles[0].Degrees > 0)
            around += Invariant.Text($"{(Count == 1 ? ", at" : " from")} {Angles[0].Degrees:F1} deg{(Count == 1 ? "" : " on")}")
                + (Arcs.IsEmpty ? "" : Invariant.Text($" = {Arcs[0].Millimeters:F2} mm round"));
        string land = Land is { } least ? Invariant.Text($", land {least.Millimeters:F2} mm") : "";
        return $"{Invariant.Text($"{Count}")} x {drill} at {station}{remark}{around}{land}";
    }

    /// <summary>A length [m] in the unit that builders read.</summary>
    private static Length Millimetres(double metres) => Length.FromMillimeters(1e3 * metres);

    private static Angle Rounded(double radians) => Angle.FromDegrees(Math.Round(radians * 180 / Math.PI, 9));
}
