using UnitsNet;

namespace Staging.Core.Gases;

/// <summary>
/// Starting values for the combustion products of black powder, with the range that the sources allow. Using them is a
/// choice the plan shows; nothing takes them silently.
/// </summary>
/// <remarks>
/// <para>
/// The nominal point is one state, not a mean of ranges: 75/15/10 potassium nitrate, charcoal (C7H4O) and sulfur burnt
/// at a constant pressure of 10 bar to chemical equilibrium. It was chosen because all its numbers belong together, 10
/// bar is the order of the chamber pressure of the motors in question, and the charcoal holds the hydrogen and oxygen
/// that real charcoal does. Equilibrium is the upper bound for the share of gas and, at given pressure, for
/// temperature.
/// </para>
/// <para>
/// The ranges do not combine freely. The classic gas fraction of 0.43 is that of cooled products; with it and the
/// nominal gas the ratio of heat capacities of gas and particles is 1.08-1.10, not the 1.12-1.16 of products at flame
/// temperature (f 0.55-0.71), and the impetus stays below 0.24 MJ/kg even at 2300 K, short of the 0.27-0.32 MJ/kg
/// expected.
/// </para>
/// </remarks>
public static class BlackPowderProducts
{
    private static readonly Provenance Equilibrium = new()
    {
        Source = "Chemical equilibrium of 75/15/10 KNO3, charcoal C7H4O, S at constant pressure, 10 bar, by the method of S. Gordon and "
            + "B. J. McBride (NASA RP-1311, 1994) with NASA polynomials; rounded",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Provenance EquilibriumSpread = new()
    {
        Source = "The same calculation for charcoal and graphite, 70-75 % nitrate, 1 to 30 bar, and for constant volume",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Provenance CooledToFlame = new()
    {
        Source = "From the cooled products of A. Noble and F. A. Abel (Phil. Trans. 165, 1875: 43 % gas; quoted at second hand) to "
            + "equilibrium at flame temperature (0.56 to 0.71)",
        How = Evidence.Judgement,
    };

    /// <summary>Share of the gas in the mass of the products f [-].</summary>
    public static SourcedRange GasMassFraction { get; } = new(
        quantity: "gas mass fraction",
        unit: "-",
        min: 0.40,
        nominal: 0.65,
        max: 0.70,
        nominalSource: Equilibrium,
        rangeSource: CooledToFlame);

    /// <summary>Temperature of the products in the chamber [K].</summary>
    public static SourcedRange FlameTemperature { get; } = new(
        quantity: "flame temperature",
        unit: "K",
        min: 1600,
        nominal: 1890,
        max: 2300,
        nominalSource: Equilibrium,
        rangeSource: EquilibriumSpread);

    /// <summary>Mean molar mass of the gas alone [g/mol].</summary>
    public static SourcedRange GasMolarMass { get; } = new(
        quantity: "molar mass of the gas",
        unit: "g/mol",
        min: 33,
        nominal: 35.6,
        max: 37,
        nominalSource: Equilibrium,
        rangeSource: EquilibriumSpread);

    /// <summary>Ratio of heat capacities of the gas alone, composition frozen [-].</summary>
    public static SourcedRange GasHeatCapacityRatio { get; } = new(
        quantity: "ratio of heat capacities of the gas",
        unit: "-",
        min: 1.20,
        nominal: 1.21,
        max: 1.25,
        nominalSource: Equilibrium,
        rangeSource: EquilibriumSpread);

    /// <summary>Heat capacity of the liquid and solid products [J/(kg K)].</summary>
    public static SourcedRange ParticleHeatCapacity { get; } = new(
        quantity: "heat capacity of the particles",
        unit: "J/(kg K)",
        min: 900,
        nominal: 1010,
        max: 1400,
        nominalSource: Equilibrium,
        rangeSource: new Provenance
        {
            Source = "From a melt of mostly potassium sulfide (about 900) to one of mostly carbonate (about 1500), NASA polynomials by "
                + "mass",
            How = Evidence.Judgement,
        });

    /// <summary>
    /// Ratio of heat capacities that gas and particles together should have at flame temperature [-].
    /// </summary>
    public static SourcedRange MixtureHeatCapacityRatio { get; } = new(
        quantity: "ratio of heat capacities of gas and particles",
        unit: "-",
        min: 1.12,
        nominal: 1.14,
        max: 1.16,
        nominalSource: Equilibrium,
        rangeSource: EquilibriumSpread);

    /// <summary>Impetus f R T that the products should have [MJ/kg].</summary>
    public static SourcedRange Impetus { get; } = new(
        quantity: "impetus",
        unit: "MJ/kg",
        min: 0.27,
        nominal: 0.287,
        max: 0.32,
        nominalSource: Equilibrium,
        rangeSource: EquilibriumSpread);

    /// <summary>The nominal products: gas and particles in equilibrium.</summary>
    /// <remarks>A changed copy is <c>Nominal with { GasMassFraction = 0.55 }</c>.</remarks>
    public static DustyGas Nominal { get; } = new()
    {
        Name = "black-powder products, nominal",
        Gas = PerfectGas.FromMolarMass(
            "black-powder gas, nominal", MolarMass.FromGramsPerMole(GasMolarMass.Nominal), GasHeatCapacityRatio.Nominal, Equilibrium),
        GasMassFraction = GasMassFraction.Nominal,
        ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(ParticleHeatCapacity.Nominal),
        Provenance = Equilibrium,
    };

    /// <summary>The nominal temperature of the products in the chamber.</summary>
    public static Temperature NominalTemperature { get; } = Temperature.FromKelvins(FlameTemperature.Nominal);
}
