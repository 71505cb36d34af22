using Staging.Core.Discharge;
using Staging.Core.Gaps;

namespace Staging.Core.Sizing;

/// <summary>The total vent areas that can be drilled into every wall on the way out of a design.</summary>
internal sealed class VentRange
{
    /// <summary>Smallest and largest diameter of a hole [m]: the range of <see cref="VentHoles.Diameter"/>.</summary>
    private const double MinDiameter = 1e-4, MaxDiameter = 0.1;

    /// <summary>
    /// Share by which a bound stays within what is allowed [-], so that rounding does not carry a hole past it.
    /// </summary>
    private const double Inside = 1e-9;

    private VentRange(Bound smallest, Bound largest) => (Smallest, Largest) = (smallest, largest);

    /// <summary>The lower bound.</summary>
    public Bound Smallest { get; }

    /// <summary>The upper bound.</summary>
    public Bound Largest { get; }

    /// <summary>Whether a total area [m2] can be drilled.</summary>
    public bool Holds(double area) => area >= Smallest.Area && area <= Largest.Area;

    /// <summary>Whether a hole of a diameter [m] can be described.</summary>
    public static bool IsDrillable(double diameter) => diameter is >= MinDiameter and <= MaxDiameter;

    /// <summary>What a layout can drill into a design.</summary>
    public static VentRange Of(VentLayout layout, GapDesign design)
    {
        double limit = design.DischargeLaw.ThicknessToDiameterLimit, wall = layout.WallThickness.Meters, thin = Thinnest(wall, limit);
        double smallest = layout.HoleCount * Math.PI / 4 * thin * thin * (1 + Inside);
        List<Bound> low = [new Bound(smallest, WhyNotSmaller("the tube", wall, limit), "Layout.WallThickness")];
        List<Bound> high = [InTube(layout, design.Tube, smallest)];
        foreach (Jacket jacket in VentPath.Jackets(design))
        {
            double total = jacket.Openings.Sum(o => o.Holes.TotalArea.SquareMeters);
            string path = $"Jackets[{design.Jackets.Items.IndexOf(jacket)}].Openings";
            foreach (JacketOpening opening in jacket.Openings)
            {
                VentHoles holes = opening.Holes;
                double thinner = Thinnest(holes.WallThickness.Meters, limit) / holes.Diameter.Meters;
                double widest = DrillingChecks.WidestRound(jacket, opening);
                double wider = Math.Min(MaxDiameter, widest) / holes.Diameter.Meters;
                low.Add(new Bound(total * thinner * thinner * (1 + Inside),
                    WhyNotSmaller($"'{Excerpt.Of(jacket.Name)}'", holes.WallThickness.Meters, limit), path));
                string most = (widest < MaxDiameter ? "a full ring of holes" : "holes of 100 mm") + $" in '{Excerpt.Of(jacket.Name)}'";
                high.Add(new Bound(total * wider * wider * (1 - Inside), most, path));
            }
        }

        return new VentRange(low.MaxBy(b => b.Area), high.MinBy(b => b.Area));
    }

    /// <summary>
    /// The most that the tube offers. A second ring halves the area of each hole: where such holes are too narrow for
    /// the wall, one ring is the most.
    /// </summary>
    private static Bound InTube(VentLayout layout, GuideTube tube, double smallest)
    {
        double ring = layout.LargestRing(tube).SquareMeters, whole = layout.LargestOpening(tube).SquareMeters;
        if (whole <= ring || smallest > 0.5 * ring)
            return new Bound(ring, "one full ring of holes", "Layout.HoleCount");
        string reason = whole < layout.Cut(tube) ? "as many full rings of holes as are counted, 1000 holes" : "the side wide open";
        return new Bound(whole, reason, "Layout.HoleCount");
    }

    /// <summary>Diameter of the narrowest hole through a wall that the law of discharge answers [m].</summary>
    private static double Thinnest(double wall, double limit) => Math.Max(MinDiameter, wall / limit);

    private static string WhyNotSmaller(string place, double wall, double limit) => wall / limit > MinDiameter
        ? Invariant.Text(
            $"the wall of {place}, {wall * 1e3:G3} mm, is {limit:G3} hole diameters thick, the most that the discharge law answers")
        : Invariant.Text($"holes of {MinDiameter * 1e3:G3} mm in {place}");

    /// <summary>One end of the areas that can be drilled.</summary>
    /// <param name="Area">The total area [m2].</param>
    /// <param name="Reason">What bounds it, in words.</param>
    /// <param name="Path">What in the layout or the design bounds it.</param>
    internal readonly record struct Bound(double Area, string Reason, string Path);
}
