using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>One gap run: the phases of the joint, the known times between them, and the events.</summary>
internal sealed class GapMarch
{
    private readonly GapProblem problem;
    private readonly GapModel model;
    private readonly SolverOptions options;
    private readonly GapParameters p;
    private readonly Integrator<Tsitouras54> integrator;
    private readonly DenseTrack track = new(GapState.Count, Tsitouras54.DenseDegree);
    private readonly GapWatch watch;
    private readonly Everyone sink;
    private readonly double[] first = new double[GapState.Count];
    private readonly List<(GapEventKind Kind, double Time)> events = [(GapEventKind.BurnThrough, 0)];
    private bool sliding;

    public GapMarch(GapProblem problem, GapModel model, SolverOptions options, IProgress<SolveProgress>? progress)
    {
        this.problem = problem;
        this.model = model;
        this.options = options;
        p = GapLowering.Lower(problem);
        integrator = new Integrator<Tsitouras54>(options, GapLowering.Scales(p));
        watch = new GapWatch(p);
        sink = new Everyone(track, watch, progress is null ? null : new ProgressReport(progress, p.Horizon));
        GapLowering.FirstState(p, first);
        first.CopyTo(integrator.State);
    }

    public GapRun Run(CancellationToken cancel)
    {
        double[] stops = [.. new[] { p.OpeningTime, p.FragmentBurnTime }.Where(t => t < p.Horizon).Order(), p.Horizon];
        bool over = false;
        foreach (double stop in stops)
        {
            while (!over && integrator.Time < stop)
                over = RunPhase(stop, cancel);
            if (!over && stop == p.FragmentBurnTime)
                events.Add((GapEventKind.FragmentsBurnt, stop));
        }

        if (!double.IsNaN(watch.LitTime))
            events.Add((GapEventKind.Lit, watch.LitTime));
        sink.Progress?.Done(integrator.Time);
        ReadOnlySpan<double> last = integrator.State;
        return GapLifting.Run(problem, model, options, new GapFinish
        {
            Parameters = p,
            Course = new DisplacementCourse(p, track, watch),
            Extremes = watch,
            Happened = events,
            End = integrator.Time,
            Ledger = GapLifting.Ledger(
                GapState.TotalsOf(first), GapState.TotalsOf(last), p, last[GapState.Burnt], new GapTotals(last[GapState.MassOut], last[GapState.EnergyOut])),
            Statistics = integrator.Statistics,
            Failure = integrator.Failure,
        });
    }

    /// <summary>Runs to the next change of the joint or to the stop; true when the run is over.</summary>
    private bool RunPhase(double stop, CancellationToken cancel)
    {
        var system = new GapSystem(p, sliding);
        if (BeginsOver(ref system))
            return true;
        system = new GapSystem(p, sliding);
        PhaseEnd end = integrator.Run(ref system, stop, sink, cancel);
        if (end == PhaseEnd.Failed)
            return true;
        bool over = false;
        foreach (FiredEvent fired in integrator.Fired)
            over |= Happens(fired);
        return over;
    }

    /// <summary>What already holds at the start of a phase is no event: a joint too weak to hold, or a gap already spent.</summary>
    private bool BeginsOver(ref GapSystem system)
    {
        Span<double> values = stackalloc double[system.EventCount];
        system.EventValues(integrator.Time, integrator.State, values);
        if (values[GapSystem.Spent] > 0)
        {
            events.Add((GapEventKind.Spent, integrator.Time));
            return true;
        }

        if (!sliding && values[GapSystem.JointMoves] > 0)
        {
            sliding = true;
            events.Add((GapEventKind.JointMoves, integrator.Time));
        }

        return false;
    }

    private bool Happens(FiredEvent fired)
    {
        switch (fired.Index)
        {
            case GapSystem.JointMoves when sliding:
                events.Add((GapEventKind.JointOpens, fired.Time));
                return true;
            case GapSystem.JointMoves:
                sliding = true;
                events.Add((GapEventKind.JointMoves, fired.Time));
                return false;
            case GapSystem.JointRests:
                sliding = false;
                integrator.State[GapState.SlideSpeed] = 0;
                events.Add((GapEventKind.JointRests, fired.Time));
                return false;
            case GapSystem.Spent:
                events.Add((GapEventKind.Spent, fired.Time));
                return true;
            case GapSystem.FrontAtLastVent:
                events.Add((GapEventKind.FrontAtLastVent, fired.Time));
                return false;
            default:
                events.Add((GapEventKind.ProductsAtNozzle, fired.Time));
                return false;
        }
    }

    /// <summary>Hands each step to the record, to the watch and to whoever follows the run.</summary>
    private sealed class Everyone(DenseTrack track, GapWatch watch, ProgressReport? progress) : IStepSink
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
