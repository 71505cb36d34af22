using System.Collections.Immutable;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Turns the plain numbers of a run back into quantities.</summary>
internal static class GapFromSi
{
    public static GapRun Run(GapProblem problem, GapModel model, SolverOptions options, in GapRunData finish)
    {
        ImmutableArray<GapEvent> events = [.. finish.Happened.OrderBy(e => e.Time)
            .Select(e => new GapEvent(e.Kind, Duration.FromSeconds(e.Time)))];
        (GapParameters p, IGapExtremes extremes) = (finish.Parameters, finish.Extremes);
        return new GapRun
        {
            Problem = problem,
            Model = model,
            Options = options,
            Outcome = new OutcomeDiagnosis(p, extremes, events, finish.Failure, finish.End).Outcome,
            Events = events,
            PeakGaugePressure = Pressure.FromPascals(extremes.PeakPressure - p.OutsidePressure),
            PeakGrainSurface = Temperature.FromKelvins(extremes.PeakSurface),
            PeakGrainSurfaceAfterOpening = extremes.PeakSurfaceAfterOpening is { } after ? Temperature.FromKelvins(after) : null,
            End = Duration.FromSeconds(finish.End),
            Ledger = finish.Ledger,
            Statistics = finish.Statistics,
            Course = finish.Course,
        };
    }

    public static SolveProgress Progress(double time, double fraction) => new(Duration.FromSeconds(time), fraction);

    public static GapProfile Profile(double time, double[] station, double[] pressure, double[] velocity, double[] temperature,
        double[] density, double[] products) => new()
        {
            Time = Duration.FromSeconds(time),
            Station_m = station,
            Pressure_Pa = pressure,
            Velocity_m_per_s = velocity,
            Temperature_K = temperature,
            Density_kg_per_m3 = density,
            Products = products,
        };

    public static GapSnapshot Snapshot(GapHistory course, double time)
    {
        GapReading m = course.At(time);
        return new GapSnapshot
        {
            Time = Duration.FromSeconds(time),
            GapPressure = Pressure.FromPascals(m.GapPressure),
            ChamberPressure = Pressure.FromPascals(m.ChamberPressure),
            JacketPressures = [.. m.JacketPressures.Select(x => Pressure.FromPascals(x))],
            Front = Length.FromMeters(m.Front),
            HotTemperature = Temperature.FromKelvins(m.HotTemperature),
            NozzleTemperature = Temperature.FromKelvins(m.NozzleTemperature),
            ProductsAtNozzle = m.ProductsAtNozzle,
            GrainSurface = Temperature.FromKelvins(m.GrainSurface),
            JointTravel = Length.FromMeters(m.JointTravel),
            Convection = HeatFlux.FromWattsPerSquareMeter(m.Convection),
            Radiation = HeatFlux.FromWattsPerSquareMeter(m.Radiation),
            Particles = HeatFlux.FromWattsPerSquareMeter(m.Particles),
        };
    }

    public static GapColumns Columns(GapHistory course, double end, double interval)
    {
        double[] time = [.. Enumerable.Range(0, (int)Math.Ceiling(end / interval * (1 - 1e-12)) + 1)
            .Select(i => Math.Min(i * interval, end))];
        GapReading[] readings = Array.ConvertAll(time, course.At);
        double[] Column(Converter<GapReading, double> of) => Array.ConvertAll(readings, of);
        return new GapColumns
        {
            Time_s = time,
            GapPressure_Pa = Column(m => m.GapPressure),
            ChamberPressure_Pa = Column(m => m.ChamberPressure),
            Front_m = Column(m => m.Front),
            HotTemperature_K = Column(m => m.HotTemperature),
            NozzleTemperature_K = Column(m => m.NozzleTemperature),
            ProductsAtNozzle = Column(m => m.ProductsAtNozzle),
            Convection_W_per_m2 = Column(m => m.Convection),
            Radiation_W_per_m2 = Column(m => m.Radiation),
            Particles_W_per_m2 = Column(m => m.Particles),
            GrainSurface_K = Column(m => m.GrainSurface),
            JointTravel_m = Column(m => m.JointTravel),
        };
    }

    /// <summary>
    /// A ledger from what a run started with, was given by its sources, gave out and holds at its end.
    /// </summary>
    public static GapLedger Ledger(in GapTotals first, in GapTotals given, in GapTotals left, in GapTotals last) => new()
    {
        InitialMass = Mass.FromKilograms(first.Mass),
        Burnt = Mass.FromKilograms(given.Mass),
        Left = Mass.FromKilograms(left.Mass),
        RelativeMassResidual = (last.Mass - first.Mass - given.Mass + left.Mass) / (first.Mass + given.Mass),
        RelativeEnergyResidual = (last.Energy - first.Energy - given.Energy + left.Energy) / (first.Energy + given.Energy),
    };
}
