using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>An explicit and an implicit integrator that take turns, phase by phase, on one state.</summary>
internal sealed class GapStepper
{
    private readonly SolverOptions options;
    private readonly double[] scales;
    private readonly int[] mates;
    private readonly StepBudget budget;
    private readonly Integrator<Tsitouras54> quick;
    private Integrator<Rodas43>? stiff;
    private int callsForJacobians;
    private bool ranStiff;

    public GapStepper(SolverOptions options, double[] scales, int[] mates)
    {
        (this.options, this.scales, this.mates, budget) = (options, scales, mates, new StepBudget(options.MaxSteps));
        quick = new Integrator<Tsitouras54>(options, scales, budget, mates) { EndsAtEdge = true };
    }

    /// <summary>Degree of the dense output that holds the steps of either.</summary>
    public static int DenseDegree => Math.Max(Tsitouras54.DenseDegree, Rodas43.DenseDegree);

    /// <summary>Time reached [s].</summary>
    public double Time => quick.Time;

    /// <summary>The state there; may be changed between phases.</summary>
    public Span<double> State => quick.State;

    /// <summary>Events of the phase just run.</summary>
    public ReadOnlySpan<FiredEvent> Fired => ranStiff ? stiff!.Fired : quick.Fired;

    /// <summary>Why the last phase failed; null when it did not.</summary>
    public SolverFailure? Failure => ranStiff ? stiff!.Failure : quick.Failure;

    /// <summary>Whether stability bound the explicit steps of a phase: all that follows goes on implicitly.</summary>
    public bool IsBoundByStability { get; private set; }

    /// <summary>Work of both, the evaluations of Jacobians included.</summary>
    public SolverWork Statistics => stiff is null
        ? quick.Statistics
        : quick.Statistics + stiff.Statistics + new SolverWork(0, 0, callsForJacobians, 0);

    /// <summary>Runs one phase.</summary>
    public PhaseEnd Run(ref GapSystem system, double stop, bool implicitly, IStepObserver sink, CancellationToken cancel)
    {
        ranStiff = implicitly;
        if (!implicitly)
        {
            PhaseEnd quickly = quick.Run(ref system, stop, sink, cancel);
            IsBoundByStability = quickly == PhaseEnd.AtEdge;
            return quickly;
        }

        stiff ??= new Integrator<Rodas43>(options, scales, budget, mates);
        stiff.Time = quick.Time;
        quick.State.CopyTo(stiff.State);
        int before = stiff.Statistics.JacobianCalls;
        PhaseEnd end = stiff.Run(ref system, stop, sink, cancel);
        callsForJacobians += (stiff.Statistics.JacobianCalls - before) * system.PassesPerJacobian;
        quick.Time = stiff.Time;
        stiff.State.CopyTo(quick.State);
        return end;
    }
}
