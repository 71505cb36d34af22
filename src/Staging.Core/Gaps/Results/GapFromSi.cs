using System.Collections.Immutable;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Turns the plain numbers of a run back into quantities.</summary>
internal static class GapFromSi
{
    public static GapRun Run(GapProblem problem, GapModel model, SolverOptions options, in GapRunData finish)
    {
        ImmutableArray<GapEvent> events = [.. finish.Events.InOrder
            .Select(e => new GapEvent(e.Kind, Duration.FromSeconds(e.Time)))];
        (GapParameters p, IgnitionTracker extremes) = (finish.Parameters, finish.Ignition);
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
