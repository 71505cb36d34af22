using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>An interval of total vent area that lights the upper motor.</summary>
/// <param name="Min">Smallest area that lights.</param>
/// <param name="Max">Largest area that lights.</param>
/// <param name="ReachesScanEnd">Whether the interval runs into the largest area there is, a side wide open, so that no
/// upper edge was found.</param>
public sealed record VentWindow(Area Min, Area Max, bool ReachesScanEnd)
{
    /// <summary>The area at an equal factor from both edges.</summary>
    public Area Middle => Area.FromSquareMeters(Math.Sqrt(Min.SquareMeters * Max.SquareMeters));

    /// <summary>
    /// The area at an equal factor from the lower edge and from the upper edge or a largest area, where that lies
    /// within the interval.
    /// </summary>
    internal Area MiddleUpTo(Area largest) => largest > Min && largest < Max ? (this with { Max = largest }).Middle : Middle;

    /// <summary>That factor [-]: how much too small or too large the area may turn out.</summary>
    public double FactorToEdges => Math.Sqrt(Max.SquareMeters / Min.SquareMeters);
}
