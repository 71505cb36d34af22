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
    public static GapSource.Booster Booster { get; } = new()
    {
        Products = BlackPowderProducts.Nominal,
        FlameTemperature = BlackPowderProducts.NominalTemperature,
        ChamberVolume = Volume.FromCubicCentimeters(6.2),
        ChamberPressure = Pressure.FromKilopascals(800),
        OpeningDiameter = Length.FromMillimeters(10),
        OpeningTime = Duration.FromMilliseconds(1),
        OpeningCoefficient = 0.8,
        NozzleThroatDiameter = Length.FromMillimeters(3.5),
        Web = new WebBurn.OverTime { Mass = Mass.FromGrams(0.19), Time = Duration.FromMilliseconds(25) },
        Provenance = Judged("Invented booster: chamber of a 12 mm grain of 10.6 g, pressure from thrust and throat; last web of 1 mm at "
            + "1700 kg/m3 is 0.19 g (0.10 to 0.30), fragments of 0.75 mm at about 15 mm/s burn in 25 ms (15 to 40)"),
    };

    /// <summary>
    /// A bore of 18 mm, 120 mm long, closed, at burn-through near the ground: vents are for the builder to choose.
    /// Products: <see cref="BlackPowderProducts.Nominal"/> at <see cref="BlackPowderProducts.NominalTemperature"/>.
    /// Chamber at burn-through: 6.2 cm3 (all of a 12 mm grain of 10.6 g at 1700 kg/m3), 800 kPa (9.3 N over a 3.5 mm
    /// throat at a thrust coefficient of 1.2, what an ideal nozzle gives at that pressure), opening 10 mm within 1 ms
    /// (the last web breaks at once over most of the grain; 6 to 12 mm, 0.3 to 3 ms), coefficient 0.8 (ragged short
    /// opening).
    /// Fragments: the last 1 mm of the grain is 0.19 g (0.10 to 0.30 g for 0.5 to 1.6 mm); pieces of 0.75 mm burn from
    /// both sides at about 15 mm/s in 25 ms (published rate laws give 12 to 17 mm/s at one atmosphere; with pieces of
    /// 0.5 to 1 mm, 15 to 40 ms). Joint: 20 N to break away (10 to 60 N; retention is not published), 80 % of that
    /// sliding, 20 mm engaged, pressure on the bore. Grain: throat 3.5 mm, recess 0.3 cm3, conductivity 0.3 W/(m K)
    /// (0.15 to 0.7, no measurement found), 920 J/(kg K) (mixture of the ingredients by mass), 1700 kg/m3 (published
    /// 1.7 to 1.8 g/cm3), lit at 773 K (723 to 823 K: hot-bath tests). Bodies: 58.5 g ahead, 30 g behind (the burnt
    /// booster), pressed together at 16 m/s2: the drag of two bodies at about 80 m/s.
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
        NozzleThroatDiameter = Length.FromMillimeters(3.5),
        RecessVolume = Volume.FromCubicCentimeters(0.3),
        Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(0.3),
        Density = Density.FromKilogramsPerCubicMeter(1700),
        HeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(920),
        IgnitionTemperature = Temperature.FromKelvins(773),
        InitialTemperature = Temperature.FromKelvins(288.15),
        Provenance = Judged("Conductivity 0.15 to 0.7 W/(m K), no measurement found; heat capacity of the ingredients by mass; density "
            + "1.7 to 1.8 g/cm3; lit at 500 C (450 to 550), from hot-bath tests at a fraction of a second"),
    };

    private static Provenance Judged(string reason) => new() { Source = reason, How = Evidence.Judgement };
}
