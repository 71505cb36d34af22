using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// Tape over the seam of a joint: its strength, and the film that the hot gas heats through its thickness. Each layer
/// loses strength evenly with its temperature and has none left at the softening temperature, where the film melts, or
/// paper chars.
/// </summary>
/// <remarks>
/// A slab heated at one face by the gas in contact, the other face insulated (air outside takes a thousandth of what
/// the gas brings). Whether it may be taken as one lump depends on the Biot number h d/k, and on how soon it softens:
/// see <see cref="DifferenceThroughThickness"/>.
/// </remarks>
public sealed record JointTape
{
    /// <summary>Axial force that tears it cold, over the whole seam [N], 0 to 5000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Force Strength { get; init => field = Guard.In(value, 0, 5000); }

    /// <summary>Thickness, adhesive included [m], 10 micrometres to 5 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Thickness { get; init => field = Guard.In(value, 1e-5, 5e-3); }

    /// <summary>Thermal conductivity [W/(m K)], 0.02 to 5.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required ThermalConductivity Conductivity { get; init => field = Guard.In(value, 0.02, 5); }

    /// <summary>Density [kg/m3], 100 to 3000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Density Density { get; init => field = Guard.In(value, 100, 3000); }

    /// <summary>Heat capacity [J/(kg K)], 500 to 4000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required SpecificEntropy HeatCapacity { get; init => field = Guard.In(value, 500, 4000); }

    /// <summary>Temperature at which it has no strength left [K], 320 to 1200.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature SofteningTemperature { get; init => field = Guard.In(value, 320, 1200); }

    /// <summary>Heat transfer from the gas at the seam, radiation included [W/(m2 K)], 0 to 20000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required HeatTransferCoefficient GasContact { get; init => field = Guard.In(value, 0, 20_000); }

    /// <summary>Where these numbers come from.</summary>
    public required Provenance Provenance { get; init => field = Guard.NotNull(value); }

    /// <summary>Biot number h d/k [-]: resistance of the film over that of the gas.</summary>
    public double BiotNumber => GasContact.WattsPerSquareMeterKelvin * Thickness.Meters / Conductivity.WattsPerMeterKelvin;

    /// <summary>
    /// A judged thin plastic film round an 18 mm seam. Thickness 50 micrometres (40 to 60), 0.2 W/(m K) (0.12 to 0.25),
    /// 1000 kg/m3 (900 to 1400), 1700 J/(kg K) (1300 to 1900), soft at 400 K (355 to 435: films of common plastics
    /// soften or shrink from 80 to 160 C), strength 100 N (50 to 200: 2 to 4 N a millimetre of width, and adhesive that
    /// lets go first). Gas contact 500 W/(m2 K) (250 to 2000): convection of 100 to 200 in the bore, several times that
    /// where gas blows through a seam, radiation of products of 1900 K some 200.
    /// </summary>
    public static JointTape ThinPlasticFilm { get; } = new()
    {
        Strength = Force.FromNewtons(100),
        Thickness = Length.FromMicrometers(50),
        Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(0.2),
        Density = Density.FromKilogramsPerCubicMeter(1000),
        HeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1700),
        SofteningTemperature = Temperature.FromKelvins(400),
        GasContact = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(500),
        Provenance = Judged("Thin plastic film: handbook ranges of common plastics, recalled; strength and gas contact judged"),
    };

    /// <summary>
    /// A judged paper tape round the same seam. Thickness 140 micrometres (110 to 180), 0.1 W/(m K) (0.06 to 0.16), 800
    /// kg/m3 (700 to 950), 1400 J/(kg K) (1300 to 1600), no strength left at 550 K (500 to 600: cellulose chars from
    /// 230 to 330 C and does not melt), strength 100 N (60 to 200). Gas contact as for the film.
    /// </summary>
    public static JointTape PaperTape { get; } = ThinPlasticFilm with
    {
        Thickness = Length.FromMicrometers(140),
        Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(0.1),
        Density = Density.FromKilogramsPerCubicMeter(800),
        HeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1400),
        SofteningTemperature = Temperature.FromKelvins(550),
        Provenance = Judged("Paper tape: handbook ranges of paper, recalled; charring of cellulose; strength and gas contact judged"),
    };

    /// <summary>
    /// Temperature difference through the film while it is heated, over its rise to softening: Bi/2 (Tg - Ts)/(Ts - T0)
    /// [-]. Below 0.1 one temperature describes it; the Biot number alone does not say so, because a film far cooler
    /// than the gas softens early in its heating.
    /// </summary>
    /// <param name="gas">Temperature of the gas [K], 200 to 6000.</param>
    /// <param name="start">Temperature of the film before [K], 200 to 320.</param>
    /// <returns>The ratio [-]; 0 where the gas is no hotter than the softening temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public double DifferenceThroughThickness(Temperature gas, Temperature start)
    {
        double Tg = Guard.In(gas, 200, 6000, nameof(gas)).Kelvins, T0 = Guard.In(start, 200, 320, nameof(start)).Kelvins,
            Ts = SofteningTemperature.Kelvins;
        return Ts > T0 ? Math.Max(0, BiotNumber / 2 * (Tg - Ts) / (Ts - T0)) : 0;
    }

    /// <summary>
    /// How long gas of constant temperature needs to take all strength from it: until its far face is soft.
    /// </summary>
    /// <param name="gas">Temperature of the gas [K], 200 to 6000.</param>
    /// <param name="start">Temperature of the film before [K], 200 to 320.</param>
    /// <returns>The time, by the exact series for a slab; null where the gas is not hot enough.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public Duration? TimeToSoften(Temperature gas, Temperature start)
    {
        double Tg = Guard.In(gas, 200, 6000, nameof(gas)).Kelvins, T0 = Guard.In(start, 200, 320, nameof(start)).Kelvins,
            Ts = SofteningTemperature.Kelvins;
        if (Ts <= T0)
            return Duration.Zero;
        if (Tg <= Ts || BiotNumber == 0)
            return null;
        double fourier = HeatedSlab.TimeOfFarFace((Tg - Ts) / (Tg - T0), BiotNumber);
        double d = Thickness.Meters;
        return Duration.FromSeconds(fourier * d * d * Density.KilogramsPerCubicMeter * HeatCapacity.JoulesPerKilogramKelvin
            / Conductivity.WattsPerMeterKelvin);
    }

    private static Provenance Judged(string reason) => new() { Source = reason, How = Evidence.Judgement };
}
