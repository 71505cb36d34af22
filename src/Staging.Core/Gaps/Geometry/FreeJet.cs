using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>What is left of a stream that crosses an opening as a free jet.</summary>
/// <remarks>
/// A round turbulent jet keeps its speed and excess temperature on the axis over a core of five to six diameters;
/// beyond it both fall as one over the distance (S. B. Pope, Turbulent Flows, 2000, section 5.1; constants from
/// memory). A jet lighter than the air round it behaves as one of the diameter d sqrt(rho_jet/rho_air) (M. W. Thring
/// and M. P. Newby, 4th Symposium on Combustion, 1953, 789-796, from memory).
/// </remarks>
internal static class FreeJet
{
    /// <summary>
    /// Density of the nominal products at 1500 K, droplets included, over that of standard air [-]: by it a jet is
    /// judged where the gas of a run is not at hand.
    /// </summary>
    public const double Hot = 0.36;

    /// <summary>
    /// Length of tube, in bores, whose whole wall is as large as an opening of area A [-]: A/(pi d^2).
    /// </summary>
    private static double FreeBores(double area, double bore) => area / (Math.PI * bore * bore);

    /// <summary>
    /// Free length of all openings to the outside together, in bores [-]. Holes into a jacket bring no outside air.
    /// </summary>
    public static double FreeBores(GapDesign design)
    {
        double sum = 0;
        foreach (Vent vent in design.Vents)
        {
            if (vent.To.Jacket is null)
                sum += FreeBores(vent.Holes.TotalArea.SquareMeters, design.Tube.Profile.BoreBelow(vent.Station.Meters));
        }

        return sum;
    }

    /// <summary>Share of speed and excess temperature that is left [-].</summary>
    /// <param name="freeBores">Free length in bores [-]; across several openings, their sum.</param>
    /// <param name="coreBores">Core of a jet as dense as the air, in bores [-].</param>
    /// <param name="densityRatio">Density of the jet over that of the air [-].</param>
    public static T Share<T>(double freeBores, double coreBores, T densityRatio)
        where T : struct, IReal<T> => T.Min(1, coreBores * T.Sqrt(densityRatio) / freeBores);
}
