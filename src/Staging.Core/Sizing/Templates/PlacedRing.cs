using Staging.Core.Discharge;

namespace Staging.Core.Sizing;

/// <summary>A ring of holes with its place on the unrolled outside of a tube.</summary>
/// <param name="Holes">The holes.</param>
/// <param name="Station">Station of their centres [m].</param>
/// <param name="First">Angle of the first hole [rad].</param>
internal readonly record struct PlacedRing(VentHoles Holes, double Station, double First)
{
    private double Radius => 0.5 * Holes.Diameter.Meters;

    /// <summary>Least wall between neighbours of the ring itself [m], on a tube of an outer radius [m].</summary>
    public double LandAround(double outer) => 2 * Math.PI * outer / Holes.Count - 2 * HalfWidth(outer);

    /// <summary>
    /// Least wall to a hole of another ring [m], on a tube of an outer radius [m]. The angles between the holes of both
    /// are one of them and whole steps, so the smallest that occurs is a remainder.
    /// </summary>
    public double LandTo(PlacedRing other, double outer)
    {
        double across = outer * Math.IEEERemainder(First - other.First, StepTo(other)), up = other.Station - Station;
        return Math.Sqrt(across * across + up * up) - Reach(across, up, outer) - other.Reach(across, up, outer);
    }

    /// <summary>The least angle by which both rings can be turned against each other and look the same [rad].</summary>
    public double StepTo(PlacedRing other)
    {
        int x = Holes.Count, y = other.Holes.Count;
        while (y != 0)
            (x, y) = (y, x % y);
        return 2 * Math.PI * x / ((double)Holes.Count * other.Holes.Count);
    }

    /// <summary>Half of the width of a hole along the outside [m]: on a curved wall more than its radius.</summary>
    private double HalfWidth(double outer) => outer * Math.Asin(Math.Min(1, Radius / outer));

    /// <summary>From the centre of a hole to its edge in a direction [m]; the edge is taken as an ellipse.</summary>
    private double Reach(double across, double up, double outer)
    {
        double distance = Math.Sqrt(across * across + up * up), wide = across / HalfWidth(outer), high = up / Radius;
        return distance > 0 ? distance / Math.Sqrt(wide * wide + high * high) : Radius;
    }
}
