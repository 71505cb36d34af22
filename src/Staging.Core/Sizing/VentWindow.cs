using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>An interval of total vent area that lights the upper motor. Both edges were seen to light.</summary>
public sealed class VentWindow
{
    /// <summary>Edges in m2.</summary>
    internal VentWindow(double min, double max, bool reachesScanEnd) =>
        (Min, Max, ReachesScanEnd) = (Area.FromSquareMeters(min), Area.FromSquareMeters(max), reachesScanEnd);

    /// <summary>Smallest area that lights.</summary>
    public Area Min { get; }

    /// <summary>Largest area that lights.</summary>
    public Area Max { get; }

    /// <summary>
    /// Whether the interval runs into the largest area that can be drilled, as a rule a side wide open, so that no
    /// upper edge was found.
    /// </summary>
    public bool ReachesScanEnd { get; }

    /// <summary>The area at an equal factor from both edges.</summary>
    public Area Middle => Area.FromSquareMeters(Math.Sqrt(Min.SquareMeters * Max.SquareMeters));

    /// <summary>That factor [-]: how much too small or too large the area may turn out.</summary>
    public double FactorToEdges => Math.Sqrt(Max.SquareMeters / Min.SquareMeters);

    /// <summary>The lower edge times a factor, or the middle of the interval where that comes first.</summary>
    internal Area AboveLowerEdge(double factor) => FactorToEdges < factor ? Middle : factor * Min;

    /// <summary>Both edges.</summary>
    /// <returns>For example <c>36.5 to 411.0 mm2</c>.</returns>
    public override string ToString() => Invariant.Text($"{Min.SquareMillimeters:F1} to {Max.SquareMillimeters:F1} mm2");
}
