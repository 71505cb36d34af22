using BenchmarkDotNet.Attributes;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Benchmarks;

/// <summary>What does one gap run cost, and does a step allocate? An invented gap of 250 mm; twice the steps must cost no more memory.</summary>
[MemoryDiagnoser]
public class GapBenchmarks
{
    private readonly GapProblem gap = MakeGap();
    private readonly GapParameters parameters = GapLowering.Lower(MakeGap());
    private readonly double[] state = new double[GapState.Count];
    private readonly double[] slope = new double[GapState.Count];
    private Integrator<Tsitouras54> coarse = null!;
    private Integrator<Tsitouras54> fine = null!;

    private static Provenance Invented { get; } = new() { Source = "Invented for benchmarks", How = Evidence.Invented };

    [GlobalSetup]
    public void Prepare()
    {
        GapLowering.FirstState(parameters, state);
        coarse = new Integrator<Tsitouras54>(new SolverOptions { RelativeTolerance = 1e-6 }, GapLowering.Scales(parameters));
        fine = new Integrator<Tsitouras54>(new SolverOptions { RelativeTolerance = 1e-9 }, GapLowering.Scales(parameters));
    }

    [Benchmark(Baseline = true, Description = "whole run, problem in, result out")]
    public GapRun WholeRun() => gap.Solve();

    [Benchmark(Description = "right-hand side")]
    public double RightHandSide()
    {
        new GapSystem(parameters, true).Derivative(1e-3, state, slope);
        return slope[0];
    }

    [Benchmark(Description = "steps alone, tolerance 1e-6")]
    public double CoarseSteps() => March(coarse);

    [Benchmark(Description = "steps alone, tolerance 1e-9")]
    public double FineSteps() => March(fine);

    /// <summary>The first 5 ms, integrator reused: what is allocated here is allocated by steps.</summary>
    private double March(Integrator<Tsitouras54> integrator)
    {
        integrator.Time = 0;
        state.CopyTo(integrator.State);
        var system = new GapSystem(parameters, false);
        integrator.Run(ref system, 5e-3);
        return integrator.State[0];
    }

    private static GapProblem MakeGap()
    {
        var tube = new GuideTube { Bore = Length.FromMillimeters(18), Length = Length.FromMillimeters(250) };
        return new GapProblem
        {
            Design = new GapDesign
            {
                Tube = tube,
                Vents = [Vent.BelowNozzle(tube, new VentHoles { Diameter = Length.FromMillimeters(5), WallThickness = Length.FromMillimeters(0.5), Count = 4 }, Length.FromMillimeters(1))],
                DischargeLaw = SharpEdgedLaw.Perry,
                Source = new BurnThroughSource
                {
                    Products = new DustyGas
                    {
                        Name = "powder products",
                        Gas = PerfectGas.FromMolarMass("powder gas", MolarMass.FromGramsPerMole(35.6), 1.21, Invented),
                        GasMassFraction = 0.65,
                        ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1010),
                        Source = Invented,
                    },
                    FlameTemperature = Temperature.FromKelvins(1890),
                    ChamberVolume = Volume.FromCubicCentimeters(5),
                    ChamberPressure = Pressure.FromKilopascals(800),
                    OpeningDiameter = Length.FromMillimeters(10),
                    OpeningTime = Duration.FromMilliseconds(1),
                    OpeningCoefficient = 0.8,
                    NozzleThroatDiameter = Length.FromMillimeters(3.5),
                    FragmentMass = Mass.FromGrams(0.19),
                    FragmentBurnTime = Duration.FromMilliseconds(25),
                    Source = Invented,
                },
                Joint = new FrictionJoint
                {
                    PressureDiameter = Length.FromMillimeters(18),
                    BreakawayForce = Force.FromNewtons(40),
                    SlidingForce = Force.FromNewtons(32),
                    Engagement = Length.FromMillimeters(20),
                    Source = Invented,
                },
                Grain = new UpperGrain
                {
                    NozzleThroatDiameter = Length.FromMillimeters(3.5),
                    RecessVolume = Volume.FromCubicCentimeters(0.3),
                    Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(0.3),
                    Density = Density.FromKilogramsPerCubicMeter(1700),
                    HeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1000),
                    IgnitionTemperature = Temperature.FromKelvins(773),
                    InitialTemperature = Temperature.FromKelvins(288),
                    Source = Invented,
                },
                Closures = GapClosures.Judged,
            },
            Bodies = new SeparatingBodies
            {
                MassAhead = Mass.FromGrams(60),
                MassBehind = Mass.FromGrams(40),
                ClosingAcceleration = Acceleration.FromMetersPerSecondSquared(10),
            },
            Surroundings = new GasState { Gas = PerfectGas.DryAir, Pressure = Pressure.FromPascals(101325), Temperature = Temperature.FromKelvins(288.15) },
        };
    }
}
