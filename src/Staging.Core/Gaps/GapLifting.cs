using System.Collections.Immutable;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Turns the plain numbers of a run back into quantities.</summary>
internal static class GapLifting
{
    public static GapRun Run(
        GapProblem problem,
        GapModel model,
        SolverOptions options,
        GapCourse course,
        IEnumerable<(GapEventKind Kind, double Time)> happened,
        ReadOnlySpan<double> first,
        GapStepper integrator)
    {
        ImmutableArray<GapEvent> events = [.. happened.OrderBy(e => e.Time).Select(e => new GapEvent(e.Kind, Duration.FromSeconds(e.Time)))];
        (GapParameters p, GapWatch watch) = (course.Parameters, course.Watch);
        return new GapRun
        {
            Problem = problem,
            Model = model,
            Options = options,
            Outcome = new OutcomeLifting(p, watch, events, integrator.Failure, integrator.Time).Outcome,
            Events = events,
            PeakGaugePressure = Pressure.FromPascals(watch.PeakPressure - p.OutsidePressure),
            PeakGrainSurface = Temperature.FromKelvins(watch.PeakSurface),
            PeakGrainSurfaceAfterOpening = watch.PeakSurfaceAfterOpening is { } after ? Temperature.FromKelvins(after) : null,
            End = Duration.FromSeconds(integrator.Time),
            Ledger = Ledger(p, first, integrator.State),
            Statistics = integrator.Statistics,
            Course = course,
        };
    }

    public static GapSnapshot Snapshot(GapCourse course, double time)
    {
        Span<double> y = stackalloc double[course.Parameters.StateCount];
        course.Track.At(time, y);
        var now = new GapMoment(course.Parameters, y);
        double surface = course.Watch.SurfaceAt(time);
        var heating = new GrainHeating(now, course.Parameters);
        return new GapSnapshot
        {
            Time = Duration.FromSeconds(time),
            GapPressure = Pressure.FromPascals(now.Pressure),
            ChamberPressure = Pressure.FromPascals(now.ChamberPressure),
            JacketPressures = [.. JacketPressures(course.Parameters, now).Select(x => Pressure.FromPascals(x))],
            Front = Length.FromMeters(now.Front),
            HotTemperature = Temperature.FromKelvins(now.Hot.Temperature),
            NozzleTemperature = Temperature.FromKelvins(now.DeadEnd.Temperature),
            ProductsAtNozzle = now.DeadEnd.ProductFraction,
            GrainSurface = Temperature.FromKelvins(surface),
            JointTravel = Length.FromMeters(y[GapState.Slide]),
            Convection = HeatFlux.FromWattsPerSquareMeter(heating.Convection(surface)),
            Radiation = HeatFlux.FromWattsPerSquareMeter(heating.Radiation(surface)),
            Particles = HeatFlux.FromWattsPerSquareMeter(heating.Particles(surface)),
        };
    }

    private static double[] JacketPressures(GapParameters p, in GapMoment now)
    {
        var pressures = new double[p.Jackets.Length];
        for (int i = 0; i < pressures.Length; i++)
            pressures[i] = now.PressureOf(p.Jackets[i]);
        return pressures;
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
            var now = new GapMoment(course.Parameters, y);
            time[i] = t;
            gap[i] = now.Pressure;
            chamber[i] = now.ChamberPressure;
            front[i] = now.Front;
            hot[i] = now.Hot.Temperature;
            nozzle[i] = now.DeadEnd.Temperature;
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
        double initial = MassOf(p, first), burnt = last[GapState.Burnt], left = last[GapState.MassOut];
        double energy = EnergyOf(p, first), burntEnergy = last[GapState.BurntEnergy];
        return new GapLedger
        {
            InitialMass = Mass.FromKilograms(initial),
            Burnt = Mass.FromKilograms(burnt),
            Left = Mass.FromKilograms(left),
            RelativeMassResidual = (MassOf(p, last) - initial - burnt + left) / (initial + burnt),
            RelativeEnergyResidual = (EnergyOf(p, last) - energy - burntEnergy + last[GapState.EnergyOut]) / (energy + burntEnergy),
        };
    }

    private static double MassOf(GapParameters p, ReadOnlySpan<double> y) => Sum(p, y, 0) + Sum(p, y, 1);

    private static double EnergyOf(GapParameters p, ReadOnlySpan<double> y) => Sum(p, y, 2);

    /// <summary>Sums one number of all parcels: those that every gap has, chambers and jackets.</summary>
    private static double Sum(GapParameters p, ReadOnlySpan<double> y, int number)
    {
        double sum = 0;
        for (int at = 0; at < GapState.Slide; at += GapState.Parcel)
            sum += y[at + number];
        for (int at = GapState.Fixed; at < p.FirstFragments; at += GapState.Parcel)
            sum += y[at + number];
        return sum;
    }
}
