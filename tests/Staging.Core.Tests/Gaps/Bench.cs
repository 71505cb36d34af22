using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>An invented gap for tests: 18 mm bore, 250 mm long, one 6 mm hole below the nozzle. It stands for nothing real.</summary>
internal static class Bench
{
    public static readonly Provenance Invented = new() { Source = "Invented for tests", How = Evidence.Invented };

    /// <summary>A gas with the gamma of air: parcels then differ in nothing that the pressure sees.</summary>
    public static readonly PerfectGas AirLike = PerfectGas.DryAir with { Name = "air-like products" };

    public static GapDesign Design { get; } = new()
    {
        Tube = Tube(250),
        Vents = [Hole(Tube(250), 6)],
        DischargeLaw = SharpEdgedLaw.Perry,
        Source = new GapSource.Booster
        {
            Products = Powder(0.65),
            FlameTemperature = Temperature.FromKelvins(1900),
            ChamberVolume = Volume.FromCubicCentimeters(5),
            ChamberPressure = Pressure.FromKilopascals(800),
            OpeningDiameter = Length.FromMillimeters(10),
            OpeningTime = Duration.FromMilliseconds(1),
            OpeningCoefficient = 0.8,
            NozzleThroatDiameter = Length.FromMillimeters(3.5),
            Web = new WebBurn.OverTime { Mass = Mass.FromGrams(0.2), Time = Duration.FromMilliseconds(25) },
            Provenance = Invented,
        },
        Joint = Joint(newtons: 20),
        Grain = new UpperGrain
        {
            NozzleThroatDiameter = Length.FromMillimeters(3.5),
            RecessVolume = Volume.FromCubicCentimeters(0.3),
            Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(0.3),
            Density = Density.FromKilogramsPerCubicMeter(1700),
            HeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1000),
            IgnitionTemperature = Temperature.FromKelvins(773),
            InitialTemperature = Temperature.FromKelvins(288),
            Provenance = Invented,
        },
        MixingAndHeat = MixingAndHeat.Judged,
    };

    public static GapProblem Gap { get; } = new()
    {
        Design = Design,
        Bodies = new SeparatingBodies
        {
            MassAhead = Mass.FromGrams(60),
            MassBehind = Mass.FromGrams(40),
            ClosingAcceleration = Acceleration.FromMetersPerSecondSquared(50),
        },
        Surroundings = new GasState
        {
            Gas = PerfectGas.DryAir,
            Pressure = Pressure.FromPascals(101325),
            Temperature = Temperature.FromKelvins(288.15),
        },
    };

    /// <summary>The same gap with ideal walls and products that differ from air in temperature only.</summary>
    public static GapProblem Adiabatic { get; } = Gap.With(d => d with
    {
        Source = d.Motor() with
        {
            Products = new DustyGas
            {
                Name = "air-like products",
                Gas = AirLike,
                GasMassFraction = 1,
                ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1000),
                Provenance = Invented,
            },
            NozzleThroatDiameter = Length.Zero,
        },
        MixingAndHeat = MixingAndHeat.Judged with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0 },
    });

    /// <summary>What an outcome says, to compare two runs by.</summary>
    public static (Type Case, Duration Time, string Cause, string Remedy) Said(this GapOutcome outcome) =>
        (outcome.GetType(), outcome.Time, outcome.Cause, outcome.Remedy);

    /// <summary>What happened when, to compare two runs by.</summary>
    public static IEnumerable<(GapEventKind Kind, Duration Time)> Times(this IEnumerable<GapEvent> events) => events.Select(e => (e.Kind, e.Time));

    /// <summary>The problem with a changed design.</summary>
    public static GapProblem With(this GapProblem gap, Func<GapDesign, GapDesign> change) => gap with { Design = change(gap.Design) };

    /// <summary>The booster motor of a design.</summary>
    public static GapSource.Booster Motor(this GapDesign design) => Assert.IsType<GapSource.Booster>(design.Source);

    /// <summary>The booster motor of a problem.</summary>
    public static GapSource.Booster Motor(this GapProblem gap) => gap.Design.Motor();

    /// <summary>How its web burns: over a stated time.</summary>
    public static WebBurn.OverTime Web(this GapDesign design) => Assert.IsType<WebBurn.OverTime>(design.Motor().Web);

    /// <summary>How its web burns: over a stated time.</summary>
    public static WebBurn.OverTime Web(this GapProblem gap) => gap.Design.Web();

    /// <summary>Fragments that burn at a rate of so many millimetres a second at one atmosphere.</summary>
    public static WebBurn.ByRateLaw Plates(double grams, double millimetres, double rate, double exponent) => new()
    {
        Mass = Mass.FromGrams(grams),
        Thickness = Length.FromMillimeters(millimetres),
        Rate = new BurnRateLaw { RateAtOneAtmosphere = Speed.FromMillimetersPerSecond(rate), PressureExponent = exponent, Provenance = Invented },
    };

    /// <summary>The gas of a design, fed as three columns say.</summary>
    public static GapSource.Tabulated Fed(this GapDesign design, double[] time_s, double[] massFlow_kg_per_s, double[] temperature_K) =>
        GapSource.Tabulated.FromColumns(design.Source.Products, time_s, massFlow_kg_per_s, temperature_K, Invented);

    /// <summary>Two motors, the second of which burns through so many seconds after the first.</summary>
    public static GapSource.Cluster Pair(GapSource.Booster first, GapSource.Booster second, double delay) =>
        new() { Motors = [first, second with { Delay = Duration.FromSeconds(delay) }] };

    public static GuideTube Tube(double millimetres) => new() { Bore = Length.FromMillimeters(18), Length = Length.FromMillimeters(millimetres) };

    /// <summary>Solves a gap with holes that nobody could drill, which a check refuses: the limit of vents that hold nothing back.</summary>
    public static GapRun SolvedThoughImpossible(GapProblem gap, GapModel? model = null, SolverOptions? options = null) =>
        model is GapModel.OneDimensional resolved
            ? new OneDimensionalSolver(gap, resolved, options ?? SolverOptions.ForGaps, null).Run(CancellationToken.None)
            : new LumpedSolver(gap, model ?? new GapModel.TwoZone(), options ?? SolverOptions.ForGaps, null).Run(CancellationToken.None);

    public static Vent Hole(GuideTube tube, double diameter, int count = 1) => Vent.BelowNozzle(
        tube,
        new VentHoles { Diameter = Length.FromMillimeters(diameter), WallThickness = Length.FromMillimeters(0.5), Count = count },
        Length.FromMillimeters(1));

    public static FrictionJoint Joint(double newtons, double engagement = 20) => new()
    {
        PressureDiameter = Length.FromMillimeters(18),
        BreakawayForce = Force.FromNewtons(newtons),
        SlidingForce = Force.FromNewtons(0.8 * newtons),
        Engagement = Length.FromMillimeters(engagement),
        Provenance = Invented,
    };

    /// <summary>The slopes of a lumped state at time zero, with the joint held.</summary>
    public static double[] Slopes(GapParameters p, double[] y, int feedPiece = -1)
    {
        var slope = new double[y.Length];
        new GapSystem(p, new GapPhase(JointPhase.Held, 0, 1, feedPiece)).Derivative(0, y, slope);
        return slope;
    }

    public static DustyGas Powder(double gasFraction) => new()
    {
        Name = "powder products",
        Provenance = Invented,
        Gas = PerfectGas.FromMolarMass("powder gas", MolarMass.FromGramsPerMole(35.5), 1.21, Invented),
        GasMassFraction = gasFraction,
        ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1200),
    };
}
