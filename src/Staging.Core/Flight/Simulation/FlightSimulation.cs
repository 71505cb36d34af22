using Staging.Core.Solving;

namespace Staging.Core.Flight;

/// <summary>
/// Flies one body after another. A flight is a chain of smooth segments; known times (curve corners, delays,
/// timers) end a segment exactly, events that depend on the motion (guide exit, apogee, ground) are located on the
/// dense output.
/// </summary>
internal sealed partial class FlightSimulation
{
    /// <summary>Natural sizes of height [m] and velocity [m/s]: they set the absolute tolerance.</summary>
    private const double HeightScale = 100, VelocityScale = 100;

    private readonly PlanParameters plan;
    private readonly FlightOptions options;
    private readonly double latest;
    private readonly FlightStepper stepper;
    private readonly CancellationToken cancel;
    private readonly Queue<BodyState> waiting = new();
    private FailureScenario scenario = FailureScenario.None;
    private StiffFlight? stiff;
    private Propulsion lastPush;
    private int otherCalls;
    private DragCurve? curve;
    private int line;

    public FlightSimulation(PlanParameters plan, FlightOptions options, CancellationToken cancel)
    {
        this.plan = plan;
        this.options = options;
        this.cancel = cancel;
        latest = options.LatestTime.Seconds;
        stepper = new FlightStepper(options.Solver, HeightScale, VelocityScale);
    }

    /// <summary>Stagings of the nominal flight, in order.</summary>
    public List<StagingRecorder> Stagings { get; } = [];

    /// <summary>The uppermost stage just before its recovery device was deployed; null where it never was.</summary>
    public BodyState? BeforeRelease { get; private set; }

    /// <summary>Work done so far.</summary>
    public SolverWork Statistics => stepper.Statistics + (stiff?.Statistics ?? default) + new SolverWork(0, 0, otherCalls, 0);

    /// <summary>The nominal flight: the uppermost stage first, then what it dropped.</summary>
    public List<BodyRecorder> FlyNominal()
    {
        scenario = FailureScenario.None;
        var stack = new BodyState(plan.Stages.Length);
        stack.Planned.Add(new ScheduledAction(0, ActionKind.Ignition, 0));
        return FlyAll(stack);
    }

    /// <summary>The flight from a staging with a given failure.</summary>
    public List<BodyRecorder> FlyFailure(BodyState start, FailureScenario failure)
    {
        scenario = failure;
        return FlyAll(new BodyState(start));
    }

    private List<BodyRecorder> FlyAll(BodyState first)
    {
        var logs = new List<BodyRecorder> { Fly(first) };
        while (waiting.TryDequeue(out BodyState? body))
            logs.Add(Fly(body));
        return logs;
    }

    private BodyRecorder Fly(BodyState body)
    {
        var log = new BodyRecorder(options.KeepTracks)
        {
            StartTime = body.Time,
            TiltIntegral = body.TiltIntegral,
            TracksTilt = body.TracksTilt,
        };
        curve = null;
        body.NextCorner(plan);
        lastPush = body.Push(plan);
        if (body.Dropped)
            Record(log, FlightEventKind.Separation, body.Highest, Snapshot(body), Snapshot(body));
        while (body.Motion != BodyMotion.Ended)
        {
            if (body.Motion == BodyMotion.Held)
            {
                LiftOff(body, log);
                continue;
            }

            double due = ExecuteDue(body, log);
            double stop = Math.Min(Math.Min(body.NextCorner(plan), due), latest);
            if (body.Time >= latest)
            {
                End(body, log, new FlightOutcome.StillAloft(body.Height));
                break;
            }

            FlySegment(body, log, stop);
        }

        otherCalls += log.Calls;
        log.EndTime = body.Time;
        log.LowestStage = body.Lowest;
        log.HighestStage = body.Highest;
        log.IgnitedAt = body.IgnitedAt;
        log.Mass = body.Push(plan).Mass0;
        return log;
    }

    private void FlySegment(BodyState body, BodyRecorder log, double stop)
    {
        FlightSegment segment = SegmentFrom(body);
        if (Descends(body) && SettledDescent(body, log, segment, ref stop))
            return;
        PhaseEvents events = body.Motion switch
        {
            BodyMotion.Guided => PhaseEvents.Guide,
            BodyMotion.Rising => PhaseEvents.Rising,
            _ => PhaseEvents.Falling,
        };
        var system = new TrajectorySystem(plan.Site, segment, events) { GuideHeight = plan.GuideLength * plan.SinElevation };
        log.Begin(segment, body.Motion != BodyMotion.Falling, body.Height, body.Velocity);
        (stepper.Time, stepper.Height, stepper.Velocity) = (body.Time, body.Height, body.Velocity);
        StiffFlight? implicitly = StiffFlight.Pays(ref system, segment, stop, body.Height, body.Velocity)
            ? stiff ??= new StiffFlight(options.Solver, HeightScale, VelocityScale, stepper.Budget)
            : null;
        PhaseEnd end = implicitly?.Run(ref system, stepper, stop, log, cancel) ?? stepper.Run(ref system, stop, log, cancel);
        (body.Time, body.Height, body.Velocity, body.TiltIntegral) = (stepper.Time, stepper.Height, stepper.Velocity, log.TiltIntegral);
        if (end == PhaseEnd.Failed)
        {
            End(body, log, new FlightOutcome.NotSolved((implicitly is null ? stepper.Failure : implicitly.Failure)!));
            return;
        }

        foreach (FiredEvent fired in implicitly is null ? stepper.Fired : implicitly.Fired)
            HandleEvent(body, log, events, fired.Index);
    }

    /// <summary>The next segment of the body; its thrust and mass are kept for snapshots.</summary>
    private FlightSegment SegmentFrom(BodyState body)
    {
        bool falling = body.Motion == BodyMotion.Falling;
        bool guided = body.Motion is BodyMotion.Guided or BodyMotion.Held;
        lastPush = body.Push(plan);
        return new FlightSegment
        {
            Push = lastPush,
            Line = body.Device >= 0 ? DragSegment.Fixed(0.5 * plan.Stages[body.Device].DeviceArea) : LineFor(body),
            Rise = falling ? 1 : plan.SinElevation,
            GravityShare = falling ? 1 : plan.SinElevation + (guided ? plan.FrictionCoefficient * plan.CosElevation : 0),
            Friction = guided ? plan.ConstantFriction : 0,
            ThrustSign = falling ? -1 : 1,
            Held = body.Motion == BodyMotion.Held,
        };
    }

    /// <summary>
    /// The line of the drag table for the present Mach number; within one table it moves only when a corner is crossed.
    /// </summary>
    private DragSegment LineFor(BodyState body)
    {
        StageParameters lowest = plan.Stages[body.Lowest];
        DragCurve drag = body.Dropped && body.Lowest == body.Highest ? lowest.DragDropped
            : body.IsBurning(body.Lowest, plan) ? lowest.DragWhileBurning
            : lowest.Drag;
        if (!ReferenceEquals(drag, curve))
        {
            curve = drag;
            line = drag.LineOf(Math.Abs(body.Velocity) / plan.Site.At(body.Height).SoundSpeed_m_per_s);
        }

        return drag[line];
    }

    /// <summary>Handles the event that ended a segment.</summary>
    private void HandleEvent(BodyState body, BodyRecorder log, PhaseEvents events, int index)
    {
        switch (events)
        {
            case var _ when index == TrajectorySystem.MachAbove:
                line++;
                break;
            case var _ when index == TrajectorySystem.MachBelow:
                line--;
                break;
            case PhaseEvents.Guide when index == 0:
                body.Motion = BodyMotion.Rising;
                body.TracksTilt = log.TracksTilt = plan.CosElevation > 0 && plan.Stages.Any(s => double.IsFinite(s.Ignition.MaxTilt));
                Record(log, FlightEventKind.GuideExit, body.Highest, Snapshot(body), Snapshot(body));
                PlanTimers(body, TimerStart.GuideExit, 0, body.Time);
                break;
            case PhaseEvents.Guide:
                End(body, log, new FlightOutcome.NeverLeftGuide(body.Height / plan.SinElevation));
                break;
            case PhaseEvents.Rising when index == 0:
                ReachApogee(body, log);
                break;
            case PhaseEvents.Rising:
                Record(log, FlightEventKind.LeftAtmosphere, body.Highest, Snapshot(body), Snapshot(body));
                End(body, log, new FlightOutcome.LeftAtmosphere(body.Time, body.Velocity));
                break;
            default:
                Land(body, log);
                break;
        }
    }

    private void ReachApogee(BodyState body, BodyRecorder log)
    {
        body.Motion = BodyMotion.Falling;
        log.Apogee = (body.Height, body.Time);
        body.TracksTilt = log.TracksTilt = false;
        Record(log, FlightEventKind.Apogee, body.Highest, Snapshot(body), Snapshot(body));
        PlanTimers(body, TimerStart.Apogee, 0, body.Time);
        if (plan.Stages[body.Highest] is { Deployment: DeploymentEvent.Apogee } stage && body.Device < 0)
            body.Planned.Add(new ScheduledAction(body.Time + stage.DeploymentLag, ActionKind.DeviceOpens, body.Highest));
    }

    private void Land(BodyState body, BodyRecorder log)
    {
        FlightState state = Snapshot(body);
        Record(log, FlightEventKind.Landing, body.Highest, state, state);
        End(body, log, new FlightOutcome.Landed(body.Time, body.Velocity, lastPush.Mass(body.Time)));
    }

    private static void End(BodyState body, BodyRecorder log, FlightOutcome outcome)
    {
        body.Motion = BodyMotion.Ended;
        log.Outcome = outcome;
    }

    /// <summary>The present state with the thrust and mass of the segment just flown.</summary>
    private FlightState Snapshot(BodyState body) =>
        new(body.Time, body.Height, body.Velocity, lastPush.Mass(body.Time), lastPush.Thrust(body.Time));

    private void Record(BodyRecorder log, FlightEventKind kind, int stage, FlightState before, FlightState after,
        string? text = null) =>
        log.Events.Add(new FlightEvent(kind, plan.Stages[stage].Name, before, after, text));
}
