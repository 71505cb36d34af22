using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>One run of a lumped model: the phases of the joint, the known times between them, and the events.</summary>
internal sealed class LumpedSolver
{
    /// <summary>
    /// Finest absolute tolerance that a gap takes [-]: what is less is rounding of what parcels exchange, and following
    /// it would cost steps without end.
    /// </summary>
    private const double FinestTolerance = 1e-12;

    /// <summary>
    /// Coarsest absolute tolerance that a gap takes [-]: in a tube of a metre the first slab behind the front holds
    /// some 1e-5 of the gap.
    /// </summary>
    private const double CoarsestTolerance = 1e-7;

    /// <summary>
    /// Absolute tolerances, in energy, below which the air ahead of the front counts as spent [-]: what is left has no
    /// temperature to speak of.
    /// </summary>
    private const double SpentTolerances = 30;

    private readonly GapProblem problem;
    private readonly GapModel model;
    private readonly SolverOptions options;
    private readonly GapParameters p;
    private readonly GapStepper integrator;
    private readonly DenseTrack track;
    private readonly IgnitionTracker ignition;
    private readonly RunEvents events;
    private readonly LumpedObserver observer;
    private readonly ProgressReport? progress;
    private readonly double[] first;
    private readonly double leastAhead;

    public LumpedSolver(GapProblem problem, GapModel model, SolverOptions options, IProgress<SolveProgress>? progress,
        bool untilLit = false)
    {
        this.problem = problem;
        this.model = model;
        this.options = options;
        p = GapToSi.ToSi(problem, model is GapModel.WellStirred);
        double[] scales = GapToSi.Scales(p);
        double absolute = Math.Clamp(options.ScaledAbsoluteTolerance, FinestTolerance, CoarsestTolerance);
        integrator = new GapStepper(options with { ScaledAbsoluteTolerance = absolute }, scales, StateLayout.Mates(p));
        leastAhead = SpentTolerances * absolute * scales[StateLayout.Cold + 2];
        track = new DenseTrack(p.StateCount, GapStepper.DenseDegree);
        ignition = new IgnitionTracker(p);
        events = new RunEvents(p, ignition);
        this.progress = progress is null ? null : new ProgressReport(progress, p.Horizon);
        var surface = new SurfaceMarch(p, ignition, options.RelativeTolerance, untilLit);
        observer = new LumpedObserver(p, track, ignition, surface, this.progress);
        first = new double[p.StateCount];
        GapToSi.FirstState(p, first);
        first.CopyTo(integrator.State);
    }

    public GapRun Run(CancellationToken cancel)
    {
        bool over = false;
        NoteSourceEnd();
        foreach (double stop in StopTimes.Of(p))
        {
            while (!over && integrator.Time < Math.Min(stop, events.Last))
                over = RunPhase(Math.Min(stop, events.Last), cancel);
            over |= integrator.Time >= events.Last;
            if (!over)
                NoteSourceEnd();
        }

        events.Finish(integrator.Failure is not null);
        progress?.Done(integrator.Time);
        ReadOnlySpan<double> y = integrator.State;
        return new GapRun(new GapRunData
        {
            Problem = problem,
            Model = model,
            Options = options,
            Parameters = p,
            Course = new LumpedHistory(p, track, ignition),
            Ignition = ignition,
            Events = events,
            End = integrator.Time,
            Ledger = new GapLedger(
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
        bool implicitly = events.Joint == JointPhase.Open || integrator.IsBoundByStability
            || Stiffness.PaysImplicit(p, integrator.State, integrator.Time, stop - integrator.Time, options.RelativeTolerance);
        PhaseEnd end = integrator.Run(ref system, stop, implicitly, observer, cancel);
        if (end == PhaseEnd.Failed)
            return true;
        bool over = false;
        foreach (FiredEvent fired in integrator.Fired)
            over |= Happens(fired);
        return over || observer.IsDone;
    }

    private GapSystem Phase(double stop) =>
        new(p, new GapPhase(events.Joint, integrator.Time, stop, p.Feed?.PieceFrom(integrator.Time) ?? -1, leastAhead));

    /// <summary>What is left of the air ahead of the front goes to the products behind it.</summary>
    private void Join()
    {
        Span<double> hot = integrator.State.Slice(StateLayout.Hot, StateLayout.Parcel),
            cold = integrator.State.Slice(StateLayout.Cold, StateLayout.Parcel);
        for (int i = 0; i < StateLayout.Parcel; i++)
            hot[i] += cold[i];
        cold.Clear();
    }

    /// <summary>
    /// What already holds at the start of a phase is no event: a joint too weak to hold, or a gap already spent.
    /// </summary>
    private bool BeginsOver(ref GapSystem system)
    {
        Span<double> values = stackalloc double[system.EventCount];
        system.EventValues(integrator.Time, integrator.State, values);
        if (values[GapSystem.Spent] > 0)
        {
            events.Spend(integrator.Time);
            return true;
        }

        if (events.Joint == JointPhase.Held && values[GapSystem.JointMoves] > 0)
            events.Move(integrator.Time);
        return false;
    }

    private bool Happens(FiredEvent fired)
    {
        switch (fired.Index)
        {
            case GapSystem.JointMoves when events.Joint == JointPhase.Slides:
                return events.Open(fired.Time, integrator.Time);
            case GapSystem.JointMoves:
                events.Move(fired.Time);
                return false;
            case GapSystem.JointRests when events.Joint == JointPhase.Open:
                return true;
            case GapSystem.JointRests:
                events.Rest(fired.Time);
                integrator.State[StateLayout.SlideSpeed] = 0;
                return false;
            case GapSystem.Spent:
                NoteSourceEnd();
                events.Spend(fired.Time);
                return true;
            case GapSystem.AheadSpent:
                Join();
                events.Reach(GapEventKind.FrontAtLastVent, fired.Time);
                return false;
            case GapSystem.FrontAtLastVent:
                events.Reach(GapEventKind.FrontAtLastVent, fired.Time);
                return false;
            case GapSystem.ProductsAtNozzle:
                events.Reach(GapEventKind.ProductsAtNozzle, fired.Time);
                return false;
            default:
                int at = p.FirstShare + fired.Index - GapSystem.FirstShare;
                integrator.State[at] = 0;
                if (at >= p.FirstWay && new LumpedView(p, integrator.State).HasFireAtNozzle)
                    events.Reach(GapEventKind.PiecesAtNozzle, fired.Time);
                NoteSourceEnd();
                return false;
        }
    }

    private void NoteSourceEnd()
    {
        if (!events.SourceEnded && integrator.Time >= p.KnownSourceEnd && new LumpedView(p, integrator.State).IsBurnt)
            events.EndSource(integrator.Time);
    }
}
