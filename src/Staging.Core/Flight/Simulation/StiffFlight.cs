using Staging.Core.Solving;

namespace Staging.Core.Flight;

/// <summary>
/// Flies segments implicitly whose drag is so strong for the mass that an explicit step would be bound by stability,
/// however little happens: dv/dt = drive - K v^2 settles at the rate 2 K v.
/// </summary>
/// <remarks>
/// Of flights that are built none comes near: a canopy on 100 g settles at some 15 1/s. Choosing wrongly costs time,
/// never accuracy.
/// </remarks>
internal sealed class StiffFlight(SolverOptions options, double heightScale, double velocityScale, StepBudget budget)
{
    /// <summary>
    /// Explicit steps of a segment from which the implicit method is the cheaper one [-]: some hundred of its steps at
    /// the default tolerance, of some twenty times the work.
    /// </summary>
    private const double ManySteps = 5000;

    private readonly Integrator<Rodas43> integrator = new(options, [heightScale, velocityScale], budget);

    /// <summary>Work done so far.</summary>
    public SolverWork Statistics => integrator.Statistics;

    /// <summary>
    /// Whether a segment pays from its start to a stop [s], at a height [m] and velocity [m/s]: whether stability would
    /// ask many steps of an explicit method, over the time at the settled speed or at the speed that the time allows.
    /// </summary>
    public static bool Pays(ref TrajectorySystem system, in FlightSegment segment, double stop, double height, double velocity)
    {
        Propulsion push = segment.Push;
        double time = stop - push.Start, mass = Math.Min(push.Mass0, push.Mass(stop)), speed = Math.Abs(velocity);
        double drive = Math.Max(Math.Abs(push.Thrust0), Math.Abs(push.Thrust(stop))) / mass;
        bool falls = segment.ThrustSign < 0;
        // Air is thickest at the ground, where a fall ends.
        double k = system.DragPerSpeedSquared(falls ? 0 : height, speed) / mass;
        if (falls)
            drive += system.Gravity(height);
        double settled = Math.Sqrt(drive / k);
        if (falls)
            time = Math.Min(time, height / settled + settled / drive);
        return 2 * k * Math.Min(settled, speed + drive * time) * time > ManySteps * Tsitouras54.EdgeOfStability;
    }

    /// <summary>Flies from where a stepper stands to a stop [s] or to the first event, and puts it there.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public PhaseEnd Run(ref TrajectorySystem system, FlightStepper from, double stop, BodyRecorder log, CancellationToken cancel)
    {
        integrator.Restart(from.Time);
        (integrator.State[0], integrator.State[1]) = (from.Height, from.Velocity);
        PhaseEnd end = integrator.Run(ref system, stop, new Recording(system, log), cancel);
        (from.Time, from.Height, from.Velocity) = (integrator.Time, integrator.State[0], integrator.State[1]);
        return end;
    }

    /// <summary>Events that ended the last segment, or happened with its end; in the order of their indices.</summary>
    public ReadOnlySpan<FiredEvent> Fired => integrator.Fired;

    public SolverFailure? Failure => integrator.Failure;

    /// <summary>Hands the steps to the record of the body.</summary>
    private sealed class Recording(TrajectorySystem system, BodyRecorder log) : IStepObserver
    {
        private TrajectorySystem system = system;

        public void Accept(double start, double length, in DenseStep step)
        {
            var drawn = FlightStep.Of(step, ref system);
            log.Take(ref drawn, ref system, length);
        }
    }
}
