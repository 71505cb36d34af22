using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Validation.Twin;

/// <summary>
/// The displacement model by tests/twins/gap_rk4.py: other state variables, other algebra, fixed-step Runge-Kutta at 1 us, finite
/// differences in the grain. It was written by a reviewer from the equations, not from this code. <see cref="StartingGaps.Bore18mm"/> with four 6 mm holes,
/// a stated pulse, and throat and heat capacity of the grain as the twin has them.
/// </summary>
public class GapRk4Twin
{
    /// <summary>The twin moves by less than 1e-7 between steps of 2 and 1 us.</summary>
    private const double Gas = 1e-6;

    /// <summary>The twin's surface is extrapolated from two grids that differ by 0.003 K.</summary>
    private const double Surface_K = 0.003;

    private static readonly GapRun Run = Problem().Solve(options: SolverOptions.Default with { RelativeTolerance = 1e-10, ScaledAbsoluteTolerance = 1e-10 });

    [Fact]
    public void Front_and_products_arrive_when_the_twin_says()
    {
        Near(0.00299899726, Run.TimeOf(GapEventKind.FrontAtLastVent)!.Value.Seconds);
        Near(0.00355460775, Run.TimeOf(GapEventKind.ProductsAtNozzle)!.Value.Seconds);
    }

    [Theory]
    [InlineData(1, 143725.680657, 156283.807133, 0.0568254648, 1676.589194, 318.123289, 0)]
    [InlineData(3, 108629.857673, 112531.642823, 0.1070117403, 1400.621125, 428.580727, 0.099435693)]
    [InlineData(11, 125436.830009, 155947.057019, 0.1157462245, 1615.671287, 1570.117201, 0.995766933)]
    public void Pressures_front_temperatures_and_composition(double time_ms, double gap_Pa, double chamber_Pa, double front_m, double hot_K, double nozzle_K, double products)
    {
        GapSnapshot s = Run.At(Duration.FromMilliseconds(time_ms));
        Near(gap_Pa, s.GapPressure.Pascals);
        Near(chamber_Pa, s.ChamberPressure.Pascals);
        Near(front_m, s.Front.Meters);
        Near(hot_K, s.HotTemperature.Kelvins);
        Near(nozzle_K, s.NozzleTemperature.Kelvins);
        Assert.Equal(products, s.ProductsAtNozzle, Gas);
    }

    [Fact]
    public void Heat_flows_by_each_mechanism()
    {
        const double excess = 1570.117201 - 706.271717;
        GapSnapshot s = Run.At(Duration.FromMilliseconds(11));
        // A surface that is off by its allowance moves the flux by its share of the excess temperature.
        const double within = Gas + Surface_K / excess;
        Assert.Equal(1, s.Convection.WattsPerSquareMeter / (677.992164 * excess), within);
        Assert.Equal(1, s.Particles.WattsPerSquareMeter / (2992.837272 * excess), within);
        double radiation = 0.5 * 0.995766933 * 5.670374419e-8 * (Math.Pow(1570.117201, 4) - Math.Pow(706.271717, 4));
        Assert.Equal(1, s.Radiation.WattsPerSquareMeter / radiation, within);
    }

    [Theory]
    [InlineData(5, 399.312501)]
    [InlineData(8, 569.146079)]
    [InlineData(11, 706.271717)]
    [InlineData(18, 837.347526)]
    public void The_grain_surface_warms(double time_ms, double surface_K) =>
        Assert.Equal(surface_K, Run.At(Duration.FromMilliseconds(time_ms)).GrainSurface.Kelvins, Surface_K);

    [Fact]
    public void The_grain_lights_and_is_hottest_and_the_gap_peaks_as_the_twin_says()
    {
        // The surface rises at 30 K/ms when it passes ignition.
        Assert.Equal(13.057372, Run.TimeOf(GapEventKind.Lit)!.Value.Milliseconds, Surface_K / 30);
        Assert.Equal(837.399422, Run.PeakGrainSurface.Kelvins, Surface_K);
        Near(101325 + 42642.33787, 101325 + Run.PeakGaugePressure.Pascals);
    }

    private static GapSource.Booster Booster => new()
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
        Provenance = new Provenance { Source = "As in the twin", How = Evidence.Invented },
    };

    private static void Near(double twin, double ours) => Assert.Equal(1, ours / twin, Gas);

    private static GapProblem Problem()
    {
        GapProblem start = StartingGaps.Bore18mm;
        var holes = new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
        return start with
        {
            Design = start.Design with
            {
                Source = Booster,
                Vents = [Vent.BelowNozzle(start.Design.Tube, holes, Length.FromMillimeters(1))],
                Grain = start.Design.Grain with
                {
                    NozzleThroatDiameter = Length.FromMillimeters(3.5),
                    HeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(920),
                },
            },
        };
    }
}
