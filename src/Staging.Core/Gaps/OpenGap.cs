using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// The gap after its joint has opened: it bleeds down through an annulus that soon is as wide as the tube. Chamber and gap then follow the outside
/// within microseconds while the bodies part over milliseconds, so the step is that of a method for stiff problems.
/// </summary>
internal sealed class OpenGap
{
    private readonly GapParameters p;
    private readonly IStepSink sink;
    private readonly GapEnd opened;
    private readonly Integrator<Rodas43> integrator;

    public OpenGap(GapParameters p, SolverOptions options, GapEnd opened, IStepSink sink)
    {
        this.p = p;
        this.sink = sink;
        this.opened = opened;
        integrator = new Integrator<Rodas43>(options, GapLowering.Scales(p)) { Time = opened.Time };
        opened.State.CopyTo(integrator.State);
    }

    /// <summary>Whether it ended because the gap was spent.</summary>
    public bool IsSpent { get; private set; }

    /// <summary>When the last source ended [s]; null while one burns.</summary>
    public double? BurntAt { get; private set; }

    /// <summary>Follows the gap until the time asked for is over, the gap is spent, or the horizon is reached.</summary>
    public GapEnd Follow(CancellationToken cancel)
    {
        double last = Math.Min(opened.Time + p.AfterOpening, p.Horizon);
        bool over = false;
        foreach (double stop in KnownTimes.Of(p).Where(t => t > opened.Time && t < last).Append(last))
        {
            while (!over && integrator.Time < stop)
                over = RunPhase(stop, cancel);
            NoteBurnt();
        }

        return new GapEnd(integrator.Time, integrator.State.ToArray(), opened.Statistics + integrator.Statistics, integrator.Failure);
    }

    /// <summary>Runs to the stop, or to the end of fragments or gap; true when the run is over.</summary>
    private bool RunPhase(double stop, CancellationToken cancel)
    {
        double now = integrator.Time;
        var system = new GapSystem(p, new GapPhase(JointPhase.Open, now, stop, p.Feed?.PieceFrom(now) ?? -1));
        PhaseEnd end = integrator.Run(ref system, stop, sink, cancel);
        foreach (FiredEvent fired in integrator.Fired)
        {
            IsSpent |= fired.Index == GapSystem.Spent;
            if (fired.Index >= GapSystem.FirstFragments)
                integrator.State[p.FirstFragments + fired.Index - GapSystem.FirstFragments] = 0;
        }

        NoteBurnt();
        return end == PhaseEnd.Failed || IsSpent;
    }

    private void NoteBurnt()
    {
        if (BurntAt is null && integrator.Time >= p.KnownSourceEnd && new GapMoment(p, integrator.State).FragmentsAreBurnt)
            BurntAt = integrator.Time;
    }
}
