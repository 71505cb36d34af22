using Staging.Core.Discharge;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>Holes between two volumes of a network, or from one to the outside.</summary>
/// <param name="From">Index of one volume.</param>
/// <param name="To">Index of the other; -1 for the outside.</param>
/// <param name="Size">The holes.</param>
/// <param name="Behind">Pressure outside [Pa].</param>
internal readonly record struct HoleLink(int From, int To, OrificeSize Size, double Behind);

/// <summary>What has passed some holes in a step.</summary>
/// <param name="Forward">Mass that went the way of the link, whatever came back [kg].</param>
/// <param name="Mass">Net mass [kg].</param>
/// <param name="Energy">Net energy [J].</param>
/// <param name="Volume">Net volume at the pressure before the holes [m3].</param>
internal readonly record struct HoleFlow(double Forward, double Mass, double Energy, double Volume)
{
    public static HoleFlow operator +(in HoleFlow x, in HoleFlow y) =>
        new(x.Forward + y.Forward, x.Mass + y.Mass, x.Energy + y.Energy, x.Volume + y.Volume);

    public static HoleFlow operator -(in HoleFlow x, in HoleFlow y) => x + -1 * y;

    public static HoleFlow operator *(double factor, in HoleFlow x) =>
        new(factor * x.Forward, factor * x.Mass, factor * x.Energy, factor * x.Volume);
}
