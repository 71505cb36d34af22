using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// The jet out of a booster's opening where it strikes the upper nozzle, while that stands in the near field: motors in
/// contact, or nearly so.
/// </summary>
/// <remarks>
/// In the open it is a <see cref="FreeJet"/> over the whole distance, in diameters of the opening. In a tube the edge
/// of a jet widens by a fifth of its way (half angle of 11 to 12 degrees, from memory) and meets the wall of a bore D
/// after 2.5 (D - d): two diameters for an opening of 10 mm in 18 mm. From there on the jet is the stream of the tube,
/// which vents end and which is modelled as such. So its mass flux fades over the guided part of the way, smoothly,
/// from all at none to nothing at <see cref="FillingDiameters"/>: a judgement, for openings from a third of the bore to
/// all of it, where the widening gives 5 to 0. The jet is taken to stand before the outside air, which shortens its
/// core the most. It is spread over its opening, or over the throat where that is larger, and aimed at it: off the axis
/// it brings less.
/// </remarks>
internal readonly struct SourceJet(GapParameters p, double slide)
{
    /// <summary>
    /// Guided way, in diameters of the opening, after which a jet is the stream of the tube [-]; a judgement, see
    /// above.
    /// </summary>
    private const double FillingDiameters = 2;

    /// <summary>
    /// Guided way, in diameters of the opening, within which the jet is still a jet: half of its flux is left at its
    /// end [-].
    /// </summary>
    private const double NearDiameters = 1;

    /// <summary>Distance from the opening to the nozzle plane [m].</summary>
    private readonly double distance = p.TubeLength + slide;

    /// <summary>How much of it lies in the tube [m]: once the joint has opened the rest is open.</summary>
    private readonly double guided = p.TubeLength + Math.Min(slide, p.Engagement);

    /// <summary>Whether anything of the jet out of an opening of a diameter [m] comes to the nozzle as a jet.</summary>
    public bool Arrives(double diameter) => guided < FillingDiameters * diameter;

    /// <summary>
    /// Whether the core of the jet reaches the throat: what it lights there is lit, whether the joint has opened or
    /// not.
    /// </summary>
    /// <param name="diameter">Diameter of the opening [m].</param>
    /// <param name="temperature">Temperature of the chamber's gas [K].</param>
    /// <param name="R">Its specific gas constant [J/(kg K)].</param>
    public bool CoreReaches(double diameter, double temperature, double R) =>
        guided <= NearDiameters * diameter && Share(diameter, temperature, R) == 1;

    /// <summary>The jet at the nozzle plane; only where it <see cref="Arrives"/>.</summary>
    /// <param name="massFlow">Flow out of the opening [kg/s]; none where it is negative.</param>
    /// <param name="area">Area of the opening [m2].</param>
    /// <param name="diameter">Its diameter [m].</param>
    /// <param name="temperature">Temperature of the chamber's gas [K].</param>
    /// <param name="R">Its specific gas constant [J/(kg K)].</param>
    /// <param name="products">Its mass fraction of products [-].</param>
    public NozzleStream At(double massFlow, double area, double diameter, double temperature, double R, double products)
    {
        double share = Share(diameter, temperature, R), fraction = share * products;
        double face = Math.Max(area, Math.PI / 4 * p.Grain.ThroatDiameter * p.Grain.ThroatDiameter);
        double s = guided / (FillingDiameters * diameter), left = (1 - s) * (1 - s) * (1 + 2 * s);
        return new NozzleStream(
            Math.Max(0, massFlow) / face * share * left,
            p.OutsideTemperature + share * (temperature - p.OutsideTemperature),
            fraction,
            fraction * p.Products.Cp + (1 - fraction) * p.Air.Cp);
    }

    /// <summary>Share of speed, excess temperature and products that a free jet keeps over the distance [-].</summary>
    private double Share(double diameter, double temperature, double R) =>
        FreeJet.Share<Real>(distance / diameter, p.JetCore, p.Air.R * p.OutsideTemperature / (R * temperature));
}
