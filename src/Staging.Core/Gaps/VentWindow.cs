using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>An interval of total vent area that lights the upper motor.</summary>
/// <param name="Least">Smallest area that lights.</param>
/// <param name="Greatest">Largest area that lights.</param>
/// <param name="ReachesScanEnd">Whether the interval runs into the largest area there is, a side wide open, so that no upper edge was found.</param>
public sealed record VentWindow(Area Least, Area Greatest, bool ReachesScanEnd)
{
    /// <summary>The area at an equal factor from both edges.</summary>
    public Area Middle => Area.FromSquareMeters(Math.Sqrt(Least.SquareMeters * Greatest.SquareMeters));

    /// <summary>The area at an equal factor from the lower edge and from the upper edge or a largest area, where that lies within the interval.</summary>
    internal Area MiddleUpTo(Area largest) => largest > Least && largest < Greatest ? (this with { Greatest = largest }).Middle : Middle;

    /// <summary>That factor [-]: how much too small or too large the area may turn out.</summary>
    public double FactorToEdges => Math.Sqrt(Greatest.SquareMeters / Least.SquareMeters);
}
