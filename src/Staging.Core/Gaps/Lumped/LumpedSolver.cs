using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>One run of a lumped model: the phases of the joint, the known times between them, and the events.</summary>
internal sealed class LumpedSolver
{
    private readonly GapProblem problem;
    private readonly GapModel model;
    private readonly SolverOptions options;
    private readonly GapParameters p;
    private readonly GapStepper integrator;
    private readonly DenseTrack track;
    private readonly IgnitionTracker watch;
    private readonly StepBroadcast sink;
    private readonly double[] first;
    private readonly List<(GapEventKind Kind, double Time)> events = [(GapEventKind.BurnThrough, 0)];
    private JointPhase joint = JointPhase.Held;
    private double last = double.PositiveInfinity;
    private bool burnt;

    public LumpedSolver(GapProblem problem, GapModel model, SolverOptions options, IProgress<SolveProgress>? progress)
    {
        this.problem = problem;
        this.model = model;
        this.options = options;
        p = GapToSi.ToSi(problem, model is GapModel.WellStirred);
        integrator = new GapStepper(options, GapToSi.Scales(p));
        track = new DenseTrack(p.StateCount, GapStepper.DenseDegree);
        watch = new IgnitionTracker(p);
        sink = new StepBroadcast(track, watch, progress is null ? null : new ProgressReport(progress, p.Horizon));
        first = new double[p.StateCount];
        GapToSi.FirstState(p, first);
        first.CopyTo(integrator.State);
    }

    public GapRun Run(CancellationToken cancel)
    {
        bool over = false;
        foreach (double stop in StopTimes.Of(p))
        {
            while (!over && integrator.Time < Math.Min(stop, last))
                over = RunPhase(Math.Min(stop, last), cancel);
            over |= integrator.Time >= last;
            if (!over)
                NoteBurnt();
        }

        if (!double.IsNaN(watch.LitTime))
            events.Add((GapEventKind.Lit, watch.LitTime));
        sink.Progress?.Done(integrator.Time);
        ReadOnlySpan<double> y = integrator.State;
        return GapFromSi.Run(problem, model, options, new GapRunData
        {
            Parameters = p,
            Course = new LumpedHistory(p, track, watch),
            Extremes = watch,
            Happened = events,
            End = integrator.Time,
            Ledger = GapFromSi.Ledger(
                GapTotals.Of(p, first),
                new GapTotals(y[StateLayout.Burnt], y[StateLayout.BurntEnergy]),
                new GapTotals(y[StateLayout.MassOut], y[StateLayout.EnergyOut]),
                GapTotals.Of(p, y)),
            Statistics = integrator.Statistics,
            Failure = integrator.Failure,
        });
    }

    /// <summary>Runs to the next change of the joint or to the stop; true when the run is over.</summary>
    private bool RunPhase(double stop, CancellationToken cancel)
    {
        GapSystem system = Phase(stop);
        if (BeginsOver(ref system))
            return true;
        system = Phase(stop);
        bool implicitly = joint == JointPhase.Open
            || Stiffness.PaysImplicit(p, integrator.State, stop - integrator.Time, options.RelativeTolerance);
        PhaseEnd end = integrator.Run(ref system, stop, implicitly, sink, cancel);
        if (end == PhaseEnd.Failed)
            return true;
        bool over = false;
        foreach (FiredEvent fired in integrator.Fired)
            over |= Happens(fired);
        return over;
    }

    private GapSystem Phase(double stop) => new(p, new GapPhase(joint, integrator.Time, stop, p.Feed?.PieceFrom(integrator.Time) ?? -1));

    /// <summary>
    /// What already holds at the start of a phase is no event: a joint too weak to hold, or a gap already spent.
    /// </summary>
    private bool BeginsOver(ref GapSystem system)
    {
        Span<double> values = stackalloc double[system.EventCount];
        system.EventValues(integrator.Time, integrator.State, values);
        if (values[GapSystem.Spent] > 0)
        {
            events.Add((GapEventKind.Spent, integrator.Time));
            return true;
        }

        if (joint == JointPhase.Held && values[GapSystem.JointMoves] > 0)
        {
            joint = JointPhase.Slides;
            events.Add((GapEventKind.JointMoves, integrator.Time));
        }

        return false;
    }

    private bool Happens(FiredEvent fired)
    {
        switch (fired.Index)
        {
            case GapSystem.JointMoves when joint == JointPhase.Slides:
                joint = JointPhase.Open;
                watch.Open();
                last = fired.Time + p.AfterOpening;
                events.Add((GapEventKind.JointOpens, fired.Time));
                return p.AfterOpening == 0;
            case GapSystem.JointMoves:
                joint = JointPhase.Slides;
                events.Add((GapEventKind.JointMoves, fired.Time));
                return false;
            case GapSystem.JointRests:
                joint = JointPhase.Held;
                integrator.State[StateLayout.SlideSpeed] = 0;
                events.Add((GapEventKind.JointRests, fired.Time));
                return false;
            case GapSystem.Spent:
                NoteBurnt();
                events.Add((GapEventKind.Spent, fired.Time));
                return true;
            case GapSystem.FrontAtLastVent or GapSystem.ProductsAtNozzle when joint == JointPhase.Open:
                return false;
            case GapSystem.FrontAtLastVent:
                events.Add((GapEventKind.FrontAtLastVent, fired.Time));
                return false;
            case GapSystem.ProductsAtNozzle:
                events.Add((GapEventKind.ProductsAtNozzle, fired.Time));
                return false;
            default:
                integrator.State[p.FirstFragments + fired.Index - GapSystem.FirstFragments] = 0;
                NoteBurnt();
                return false;
        }
    }

    /// <summary>Notes, once, that the last source has ended.</summary>
    private void NoteBurnt()
    {
        if (burnt || integrator.Time < p.KnownSourceEnd || !new GapState(p, integrator.State).FragmentsAreBurnt)
            return;
        burnt = true;
        events.Add((GapEventKind.FragmentsBurnt, integrator.Time));
    }

    /// <summary>Hands each step to the record, to the watch and to whoever follows the run.</summary>
    private sealed class StepBroadcast(DenseTrack track, IgnitionTracker watch, ProgressReport? progress) : IStepObserver
    {
        public ProgressReport? Progress => progress;

        public void Accept(double start, double length, in DenseStep step)
        {
            track.Accept(start, length, step);
            watch.Accept(start, length, step);
            progress?.Reached(start + length);
        }
    }
}
