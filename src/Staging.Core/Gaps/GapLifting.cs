using System.Collections.Immutable;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Turns the plain numbers of a run back into quantities.</summary>
internal static class GapLifting
{
    public static GapRun Run(
        GapProblem problem,
        SolverOptions options,
        GapCourse course,
        IEnumerable<(GapEventKind Kind, double Time)> happened,
        ReadOnlySpan<double> first,
        GapEnd end)
    {
        ImmutableArray<GapEvent> events = [.. happened.OrderBy(e => e.Time).Select(e => new GapEvent(e.Kind, Duration.FromSeconds(e.Time)))];
        (GapParameters p, GapWatch watch) = (course.Parameters, course.Watch);
        return new GapRun
        {
            Problem = problem,
            Options = options,
            Outcome = new OutcomeLifting(problem.Design, p, watch, events, end.Failure, end.Time).Outcome,
            Events = events,
            PeakGaugePressure = Pressure.FromPascals(watch.PeakPressure - p.OutsidePressure),
            PeakGrainSurface = Temperature.FromKelvins(watch.PeakSurface),
            PeakGrainSurfaceAfterOpening = watch.PeakSurfaceAfterOpening is { } after ? Temperature.FromKelvins(after) : null,
            End = Duration.FromSeconds(end.Time),
            Ledger = Ledger(p, first, end.State),
            Statistics = end.Statistics,
            Course = course,
        };
    }

    public static GapSnapshot Snapshot(GapCourse course, double time)
    {
        Span<double> y = stackalloc double[course.Parameters.StateCount];
        course.Track.At(time, y);
        GapRates rates = default;
        var flows = new GapFlows(course.Parameters, time, y, ref rates);
        double surface = course.Watch.SurfaceAt(time);
        var heating = new GrainHeating(flows, course.Parameters);
        return new GapSnapshot
        {
            Time = Duration.FromSeconds(time),
            GapPressure = Pressure.FromPascals(flows.Pressure),
            ChamberPressure = Pressure.FromPascals(flows.ChamberPressure),
            Front = Length.FromMeters(flows.Front),
            HotTemperature = Temperature.FromKelvins(flows.Hot.Temperature),
            NozzleTemperature = Temperature.FromKelvins(flows.DeadEnd.Temperature),
            ProductsAtNozzle = flows.DeadEnd.ProductFraction,
            GrainSurface = Temperature.FromKelvins(surface),
            JointTravel = Length.FromMeters(y[GapState.Slide]),
            Convection = HeatFlux.FromWattsPerSquareMeter(heating.Convection(surface)),
            Radiation = HeatFlux.FromWattsPerSquareMeter(heating.Radiation(surface)),
            Particles = HeatFlux.FromWattsPerSquareMeter(heating.Particles(surface)),
        };
    }

    public static GapColumns Columns(GapCourse course, double end, double interval)
    {
        int n = (int)Math.Ceiling(end / interval * (1 - 1e-12)) + 1;
        double[] time = new double[n], gap = new double[n], chamber = new double[n], front = new double[n], hot = new double[n],
            nozzle = new double[n], surface = new double[n], travel = new double[n];
        Span<double> y = stackalloc double[course.Parameters.StateCount];
        for (int i = 0; i < n; i++)
        {
            double t = Math.Min(i * interval, end);
            course.Track.At(t, y);
            GapRates rates = default;
            var flows = new GapFlows(course.Parameters, t, y, ref rates);
            time[i] = t;
            gap[i] = flows.Pressure;
            chamber[i] = flows.ChamberPressure;
            front[i] = flows.Front;
            hot[i] = flows.Hot.Temperature;
            nozzle[i] = flows.DeadEnd.Temperature;
            surface[i] = course.Watch.SurfaceAt(t);
            travel[i] = y[GapState.Slide];
        }

        return new GapColumns
        {
            Time_s = time,
            GapPressure_Pa = gap,
            ChamberPressure_Pa = chamber,
            Front_m = front,
            HotTemperature_K = hot,
            NozzleTemperature_K = nozzle,
            GrainSurface_K = surface,
            JointTravel_m = travel,
        };
    }

    /// <summary>The ledger at the end of a run, from its first and last states.</summary>
    private static GapLedger Ledger(GapParameters p, ReadOnlySpan<double> first, ReadOnlySpan<double> last)
    {
        double initial = MassOf(first), burnt = last[GapState.Burnt], left = last[GapState.MassOut];
        double energy = EnergyOf(first), burntEnergy = burnt * p.Products.Cp * p.FlameTemperature;
        return new GapLedger
        {
            InitialMass = Mass.FromKilograms(initial),
            Burnt = Mass.FromKilograms(burnt),
            Left = Mass.FromKilograms(left),
            RelativeMassResidual = (MassOf(last) - initial - burnt + left) / (initial + burnt),
            RelativeEnergyResidual = (EnergyOf(last) - energy - burntEnergy + last[GapState.EnergyOut]) / (energy + burntEnergy),
        };
    }

    private static double MassOf(ReadOnlySpan<double> y)
    {
        double sum = 0;
        for (int zone = 0; zone < GapState.Slide; zone += 3)
            sum += y[zone] + y[zone + 1];
        return sum;
    }

    private static double EnergyOf(ReadOnlySpan<double> y)
    {
        double sum = 0;
        for (int zone = 0; zone < GapState.Slide; zone += 3)
            sum += y[zone + 2];
        return sum;
    }
}
