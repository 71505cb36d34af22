using Staging.Core.Discharge;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// Gaps to start from: invented, complete, every number with its reason. Replace what you know better by <c>with</c>.
/// </summary>
/// <remarks>
/// They stand for no real motor or rocket. What they say about a real one is worth what the replaced numbers are worth.
/// </remarks>
public static class StartingGaps
{
    /// <summary>The invented booster motor of <see cref="Bore18mm"/>, described there.</summary>
    public static GapSource.EndBurner Booster { get; } = new()
    {
        Products = BlackPowderProducts.Nominal,
        FlameTemperature = BlackPowderProducts.NominalTemperature,
        GrainDiameter = Length.FromMillimeters(15),
        BurntLength = Length.FromMillimeters(40),
        NozzleThroatDiameter = Length.FromMillimeters(3.4),
        Density = Density.FromKilogramsPerCubicMeter(1700),
        Rate = BurnRateLaw.Shidlovskiy,
        Strength = Pressure.FromMegapascals(5),
        FreshFaceDelay = Duration.FromMilliseconds(20),
        OpeningCoefficient = 0.8,
        Provenance = Judged("Invented booster: grain of 15 mm by 40 mm, throat of 3.4 mm; strength 5 MPa (2 to 10, no measurement found), "
            + "4 cracks (3 to 6), pieces half-way between the bounds of their speed, fresh faces lit after 20 ms (5 to 80)"),
    };

    /// <summary>
    /// A bore of 18 mm, 120 mm long, closed, at burn-through near the ground: vents are for the builder to choose.
    /// Products: <see cref="BlackPowderProducts.Nominal"/> at <see cref="BlackPowderProducts.NominalTemperature"/>.
    /// Booster: an end burner of 15 mm by 40 mm, 12.0 g at 1700 kg/m3 (published 1.7 to 1.8 g/cm3), throat 3.4 mm; rate
    /// of <see cref="BurnRateLaw.Shidlovskiy"/>, which with face and throat gives 498 kPa and 17.7 mm/s, so 2.3 s of
    /// burning. The web breaks at 5 MPa (2 to 10 MPa: bounded, no measurement found) into 4 pieces (3 to 6), which fly
    /// half-way between the bounds of their speed; their fresh faces are lit after 20 ms (5 to 80 ms: the time that the
    /// grain's own law gives in products of 1000 to 1800 K). Opening coefficient 0.8 (ragged short opening).
    /// Joint: 20 N to break away (10 to 60 N; retention is not published), 80 % of that sliding, 20 mm engaged,
    /// pressure on the bore. Grain: throat 3.4 mm, recess 0.3 cm3, conductivity 0.3 W/(m K) (0.15 to 0.7, no
    /// measurement found), 1150 J/(kg K) (920 of the ingredients by mass, and a quarter more for what sulfur and
    /// nitrate take to melt and to change up to 773 K; from memory), 1700 kg/m3, lit at 773 K (650 to 920 K within
    /// milliseconds).
    /// Bodies: 58.5 g ahead, 30 g behind (the burnt booster), pressed together at 16 m/s2: the drag of two bodies at
    /// about 80 m/s.
    /// </summary>
    public static GapProblem Bore18mm { get; } = new()
    {
        Design = new GapDesign
        {
            Tube = new GuideTube { Bore = Length.FromMillimeters(18), Length = Length.FromMillimeters(120) },
            Vents = [],
            DischargeLaw = SharpEdgedLaw.Perry,
            Source = Booster,
            Joint = new FrictionJoint
            {
                PressureDiameter = Length.FromMillimeters(18),
                BreakawayForce = Force.FromNewtons(20),
                SlidingForce = Force.FromNewtons(16),
                Engagement = Length.FromMillimeters(20),
                Provenance = Judged("A firm friction fit; 10 to 60 N; sliding friction of board is about 80 % of static"),
            },
            Grain = Grain(),
            MixingAndHeat = MixingAndHeat.Judged,
        },
        Bodies = new SeparatingBodies
        {
            MassAhead = Mass.FromGrams(58.5),
            MassBehind = Mass.FromGrams(30),
            ClosingAcceleration = Acceleration.FromMetersPerSecondSquared(16),
        },
        Surroundings = new GasState
        {
            Gas = PerfectGas.DryAir,
            Pressure = Pressure.FromPascals(101325),
            Temperature = Temperature.FromKelvins(288.15),
        },
    };

    private static UpperGrain Grain() => new()
    {
        NozzleThroatDiameter = Length.FromMillimeters(3.4),
        RecessVolume = Volume.FromCubicCentimeters(0.3),
        Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(0.3),
        Density = Density.FromKilogramsPerCubicMeter(1700),
        HeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1150),
        IgnitionTemperature = Temperature.FromKelvins(773),
        InitialTemperature = Temperature.FromKelvins(288.15),
        Provenance = Judged("Conductivity 0.15 to 0.7 W/(m K), no measurement found; heat capacity of the ingredients by mass and "
            + "a quarter more for latent heats; density 1.7 to 1.8 g/cm3; lit at 773 K (650 to 920 within milliseconds, by one-step "
            + "kinetics)"),
    };

    private static Provenance Judged(string reason) => new() { Source = reason, How = Evidence.Judgement };
}
