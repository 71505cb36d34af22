namespace Staging.Core.Flight;

/// <summary>The actions at known times.</summary>
internal sealed partial class FlightSimulation
{
    /// <summary>Carries out all actions that are due, in the order of time, kind and stage.</summary>
    /// <returns>When the next is due [s]; infinite where nothing is planned.</returns>
    private double ExecuteDue(BodyState body, BodyRecorder log)
    {
        while (body.Motion != BodyMotion.Ended)
        {
            int first = body.FirstPlanned();
            if (first < 0)
                break;
            ScheduledAction action = body.Planned[first];
            if (action.Time > body.Time)
                return action.Time;
            KeepForFailures(body, action);
            body.Planned.RemoveAt(first);
            Execute(body, log, action);
        }

        return double.PositiveInfinity;
    }

    private void Execute(BodyState body, BodyRecorder log, ScheduledAction action)
    {
        int k = action.Stage;
        FlightState before = Snapshot(body);
        switch (action.Kind)
        {
            case ActionKind.Ignition:
                Ignite(body, k, action.Time);
                Record(log, FlightEventKind.Ignition, k, before, After(body));
                if (Staging(k) is { } staging)
                    staging.AtIgnition = (body.Height, body.Velocity);
                break;
            case ActionKind.Burnout:
                Record(log, FlightEventKind.Burnout, k, before, After(body));
                AfterBurnout(body, k, action.Time);
                break;
            case ActionKind.BurnThrough:
                Record(log, FlightEventKind.BurnThrough, k, before, After(body));
                PlanTimers(body, TimerStart.BurnThroughBelow, k + 1, action.Time);
                if (k < body.Highest)
                    BurnThrough(body, log, k, action.Time);
                break;
            case ActionKind.TimerEnd:
                EndTimer(body, log, k, action.Time);
                break;
            case ActionKind.Separation:
                if (k >= body.Lowest && k < body.Highest)
                {
                    Separate(body, k, action.Time);
                    Record(log, FlightEventKind.Separation, k, before, After(body));
                }

                break;
            case ActionKind.Ejection:
                Record(log, FlightEventKind.Ejection, k, before, before);
                if (plan.Stages[k].Deployment is DeploymentEvent.MotorDelay)
                    OpenDevice(body, log, k);
                break;
            default:
                OpenDevice(body, log, k);
                break;
        }
    }

    private FlightState After(BodyState body)
    {
        body.NextCorner(plan);
        lastPush = body.Push(plan);
        return Snapshot(body);
    }

    private void Ignite(BodyState body, int k, double time)
    {
        StageParameters stage = plan.Stages[k];
        body.IgnitedAt[k] = time;
        if (k == 0)
            PlanTimers(body, TimerStart.Launch, 0, time);
        PlanTimers(body, TimerStart.IgnitionBelow, k + 1, time);
        double burnout = time + stage.MotorEnd;
        body.Planned.Add(new ScheduledAction(time + stage.Burn.End, ActionKind.Burnout, k));
        if (!double.IsNaN(stage.BurnThrough))
            body.Planned.Add(new ScheduledAction(Math.Min(time + stage.BurnThrough, burnout), ActionKind.BurnThrough, k));
        if (!double.IsNaN(stage.Delay))
            body.Planned.Add(new ScheduledAction(burnout + stage.Delay, ActionKind.Ejection, k));
    }

    private void AfterBurnout(BodyState body, int k, double time)
    {
        if (k >= body.Highest || plan.Stages[k + 1].Ignition is not { Case: StageIgnition.ByElectronics } ignition)
            return;
        if (double.IsFinite(ignition.SeparationLag) && (!scenario.Cold(k + 1) || scenario.Parts(k + 1)))
            body.Planned.Add(new ScheduledAction(time + ignition.SeparationLag, ActionKind.Separation, k));
        PlanTimers(body, TimerStart.BurnoutBelow, k + 1, time);
    }

    /// <summary>Starts the timers that wait for an event: those of one stage, or of all where the stage is 0.</summary>
    private void PlanTimers(BodyState body, TimerStart from, int stage, double time)
    {
        for (int k = Math.Max(body.Lowest, 1); k <= body.Highest; k++)
        {
            if (plan.Stages[k].Ignition is { Case: StageIgnition.ByElectronics x } ignition && x.From == from && (stage == 0 || stage == k))
                body.Planned.Add(new ScheduledAction(time + ignition.Timer, ActionKind.TimerEnd, k));
        }
    }

    private void Separate(BodyState body, int k, double time)
    {
        if (options.Scope != FlightScope.UppermostStage)
            DropStage(body, k, time);
        body.Lowest = k + 1;
        body.Planned.RemoveAll(a => a.Stage <= k);
        if (body.Motion == BodyMotion.Guided && body.Velocity <= 0)
            body.Motion = BodyMotion.Held;
        PlanTimers(body, TimerStart.Separation, k + 1, time);
        if (Staging(k + 1) is { } staging)
            staging.SeparationTime = time;
    }

    /// <summary>The body that is left behind, flown after this one has ended.</summary>
    private void DropStage(BodyState body, int k, double time)
    {
        var left = new BodyState(body) { Highest = k, Dropped = true };
        left.Planned.RemoveAll(a => a.Stage > k);
        if (left.Motion == BodyMotion.Guided)
            left.Motion = left.Velocity > 0 ? BodyMotion.Rising : BodyMotion.Held;
        StageParameters stage = plan.Stages[k];
        if (stage.Deployment is DeploymentEvent.Separation)
            left.Planned.Add(new ScheduledAction(time + stage.DeploymentLag, ActionKind.DeviceOpens, k));
        // Electronics that wait for apogee act at once when they separate on the way down.
        if (stage.Deployment is DeploymentEvent.Apogee && left.Motion == BodyMotion.Falling && !left.DeviceOut[k])
            left.Planned.Add(new ScheduledAction(time + stage.DeploymentLag, ActionKind.DeviceOpens, k));
        left.Device = left.DeviceOut[k] ? k : -1;
        waiting.Enqueue(left);
    }

    /// <summary>A device is deployed; it acts when nothing is attached above its stage.</summary>
    private void OpenDevice(BodyState body, BodyRecorder log, int k)
    {
        if (scenario.Stuck(k))
            return;
        body.DeviceOut[k] = true;
        if (k != body.Highest || plan.Stages[k].DeviceArea == 0)
            return;
        body.Device = k;
        FlightState state = Snapshot(body);
        Record(log, FlightEventKind.DeviceOpens, k, state, state);
    }
}
