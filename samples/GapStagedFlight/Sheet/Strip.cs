using Staging.Core.Sizing;

namespace GapStagedFlight.Sheet;

/// <summary>
/// A wall unrolled to a strip of paper: x to the right from its left edge, station upwards from the booster motor [mm]. Its
/// seam runs where the holes leave most room.
/// </summary>
internal sealed class Strip
{
    /// <summary>Paper that goes below the other end for glue.</summary>
    public const double Overlap = 10;

    /// <summary>Room for words below the lowest holes of a strip that does not begin at station 0.</summary>
    private const double Below = 60;

    private readonly double seam;

    public Strip(HoleTemplate template, double tallest)
    {
        Template = template;
        Around = Math.PI * template.OuterDiameter!.Value.Millimeters;
        double[] arcs = [.. template.Rings.SelectMany(r => r.Arcs.Select(a => a.Millimeters)).Order()];
        seam = Enumerable.Range(0, arcs.Length).Select(i => (From: arcs[i], To: i + 1 < arcs.Length ? arcs[i + 1] : arcs[0] + Around))
            .MaxBy(gap => gap.To - gap.From) is var widest ? 0.5 * (widest.From + widest.To) : 0;
        Holes = [.. template.Rings.SelectMany(r => r.Arcs.Select(a => new StripHole(Across(a.Millimeters), r.Station!.Value.Millimeters,
            r.Diameter.Millimeters, StripHole.Label(r))))];
        Top = Math.Max(template.GapLength.Millimeters, Holes.Max(h => h.Station + 0.5 * h.Diameter) + 1);
        double lowest = Holes.Min(h => h.Station - 0.5 * h.Diameter);
        Bottom = Top <= tallest ? 0 : Math.Max(0, 5 * Math.Floor((lowest - Below) / 5));
    }

    public HoleTemplate Template { get; }

    /// <summary>Circumference of the outside.</summary>
    public double Around { get; }

    public double Width => Around + Overlap;

    /// <summary>Stations of the lower and the upper edge.</summary>
    public double Bottom { get; }

    public double Top { get; }

    public double Height => Top - Bottom;

    public IReadOnlyList<StripHole> Holes { get; }

    /// <summary>Where the line lies from which angles are counted.</summary>
    public double Zero => Across(0);

    public bool EndsAtNozzle => Top == Template.GapLength.Millimeters;

    private double Across(double arc) => (arc - seam + 2 * Around) % Around;
}

/// <summary>A hole on a strip [mm].</summary>
internal sealed record StripHole(double X, double Station, double Diameter, string Drill)
{
    /// <summary>Length of an arm of the cross on its centre.</summary>
    public double Arm => 0.5 * Diameter + 1;

    public static string Label(HoleRing ring) => ring.Drill?.Label ?? FormattableString.Invariant($"{ring.Diameter.Millimeters:F2} mm");
}
