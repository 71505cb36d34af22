using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Validation.Twin;

/// <summary>
/// The displacement model by tests/twins/gap_rk4.py: other state variables, other algebra, fixed-step Runge-Kutta at 1 us, finite
/// differences in the grain. It was written by a reviewer from the equations, not from this code. <see cref="StartingGaps.Bore18mm"/> with four 6 mm holes.
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
        Near(0.00281986873, Run.TimeOf(GapEventKind.FrontAtLastVent)!.Value.Seconds);
        Near(0.00337885633, Run.TimeOf(GapEventKind.ProductsAtNozzle)!.Value.Seconds);
    }

    [Theory]
    [InlineData(1, 144768.498581, 156705.07634, 0.0574375114, 1709.02105, 318.778795, 0)]
    [InlineData(3, 110284.902792, 114189.190895, 0.1088474082, 1452.51678, 597.722511, 0.213670548)]
    [InlineData(11, 126759.421588, 156822.552253, 0.1157608064, 1715.43343, 1684.904108, 0.996472403)]
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
        const double excess = 1684.904108 - 747.007637;
        GapSnapshot s = Run.At(Duration.FromMilliseconds(11));
        // A surface that is off by its allowance moves the flux by its share of the excess temperature.
        const double within = Gas + Surface_K / excess;
        Assert.Equal(1, s.Convection.WattsPerSquareMeter / (687.495798 * excess), within);
        Assert.Equal(1, s.Particles.WattsPerSquareMeter / (2959.816903 * excess), within);
        double radiation = 0.5 * 0.996472403 * 5.670374419e-8 * (Math.Pow(1684.904108, 4) - Math.Pow(747.007637, 4));
        Assert.Equal(1, s.Radiation.WattsPerSquareMeter / radiation, within);
    }

    [Theory]
    [InlineData(5, 414.742341)]
    [InlineData(8, 597.945300)]
    [InlineData(11, 747.007637)]
    [InlineData(18, 891.795507)]
    public void The_grain_surface_warms(double time_ms, double surface_K) =>
        Assert.Equal(surface_K, Run.At(Duration.FromMilliseconds(time_ms)).GrainSurface.Kelvins, Surface_K);

    [Fact]
    public void The_grain_lights_and_is_hottest_and_the_gap_peaks_as_the_twin_says()
    {
        // The surface rises at 39 K/ms when it passes ignition.
        Assert.Equal(11.661656, Run.TimeOf(GapEventKind.Lit)!.Value.Milliseconds, Surface_K / 39);
        Assert.Equal(891.80776, Run.PeakGrainSurface.Kelvins, Surface_K);
        Near(101325 + 43664.85597, 101325 + Run.PeakGaugePressure.Pascals);
    }

    private static void Near(double twin, double ours) => Assert.Equal(1, ours / twin, Gas);

    private static GapProblem Problem()
    {
        GapProblem start = StartingGaps.Bore18mm;
        var holes = new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
        return start with { Design = start.Design with { Vents = [Vent.BelowNozzle(start.Design.Tube, holes, Length.FromMillimeters(1))] } };
    }
}
