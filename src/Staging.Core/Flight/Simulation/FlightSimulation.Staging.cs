using System.Globalization;
using Staging.Core.Gases;

namespace Staging.Core.Flight;

/// <summary>Whether the next stage lights, and when the stages part.</summary>
internal sealed partial class FlightSimulation
{
    private StagingRecorder? Staging(int stage) => scenario == FailureScenario.None ? Stagings.Find(s => s.Stage == stage) : null;

    /// <summary>
    /// Keeps a copy of the stack where a staging begins: at the burn-through below; with electronics at the burnout
    /// below, or when the timer ends if that comes first.
    /// </summary>
    private void KeepForFailures(BodyState body, ScheduledAction action)
    {
        int upper = action.Kind == ActionKind.TimerEnd ? action.Stage : action.Stage + 1;
        bool copies = options.Scope == FlightScope.Everything;
        if (copies && scenario == FailureScenario.None && Releases(body, action))
            BeforeRelease ??= new BodyState(body);
        if (scenario != FailureScenario.None || upper <= body.Lowest || upper > body.Highest || Staging(upper) is not null)
            return;
        bool electronic = plan.Stages[upper].Ignition.Case is StageIgnition.ByElectronics;
        if (action.Kind == (electronic ? ActionKind.Burnout : ActionKind.BurnThrough) || action.Kind == ActionKind.TimerEnd)
            Stagings.Add(new StagingRecorder(upper, copies ? new BodyState(body) : body) { State = Describe(body, upper - 1) });
    }

    /// <summary>Whether an action deploys the device of the uppermost stage.</summary>
    private bool Releases(BodyState body, ScheduledAction action) =>
        action.Stage == plan.Stages.Length - 1
        && body.Highest == action.Stage
        && plan.Stages[action.Stage].DeviceArea > 0
        && (action.Kind == ActionKind.DeviceOpens
            || (action.Kind == ActionKind.Ejection && plan.Stages[action.Stage].Deployment is DeploymentEvent.MotorDelay));

    private void BurnThrough(BodyState body, BodyRecorder log, int k, double time)
    {
        IgnitionParameters ignition = plan.Stages[k + 1].Ignition;
        if (ignition.Case is StageIgnition.ByElectronics)
            return;
        if (scenario.Cold(k + 1))
        {
            StayCold(body, log, k + 1, "This case assumes that the motor stays cold.");
            StagingRecorder nominal = Stagings.Find(s => s.Stage == k + 1)!;
            if (scenario.Parts(k + 1))
                body.Planned.Add(new ScheduledAction(double.IsNaN(nominal.SeparationTime) ? time : nominal.SeparationTime,
                    ActionKind.Separation, k));
            return;
        }

        if (ignition.Case is StageIgnition.ByContact)
        {
            Light(body, k + 1, time + ignition.Lag + scenario.Late(k + 1), time + ignition.Lag, "Motors in contact; ignition is assumed.");
            return;
        }

        GapIgnitionResult answer = Ask(((StageIgnition.ByGap)ignition.Case).Gap, body, k);
        (double lag, double parting) = FlightFromSi.Times(answer);
        if (!double.IsNaN(lag))
        {
            Light(body, k + 1, time + lag + scenario.Late(k + 1), time + parting, answer.Reason);
            return;
        }

        StayCold(body, log, k + 1, answer.Reason);
        if (!double.IsNaN(parting))
            body.Planned.Add(new ScheduledAction(time + parting, ActionKind.Separation, k));
    }

    /// <summary>
    /// The answer of the gap model. A flight in which this motor lights late starts at the nominal burn-through, so
    /// the nominal answer applies to it.
    /// </summary>
    private GapIgnitionResult Ask(IGapIgnition gap, BodyState body, int below)
    {
        if (scenario.Stage == below + 1 && Stagings.Find(s => s.Stage == below + 1)?.Answer is { } nominal)
            return nominal;
        GapIgnitionResult answer = gap.Ignite(Staging(below + 1)?.State ?? Describe(body, below), cancel);
        if (Staging(below + 1) is { } staging)
            staging.Answer = answer;
        return answer;
    }

    private void EndTimer(BodyState body, BodyRecorder log, int k, double time)
    {
        IgnitionParameters ignition = plan.Stages[k].Ignition;
        bool separates = double.IsNaN(ignition.SeparationLag);
        string? refusal = scenario.Cold(k) ? "This case assumes that the motor stays cold." : Refusal(body, log, ignition, time);
        if (refusal is null)
        {
            double lit = time + ignition.IgniterLag + scenario.Late(k);
            Light(body, k, lit, separates ? lit : double.NaN, "The timer ran out and no guard refused.");
            return;
        }

        StayCold(body, log, k, refusal);
        if (separates && scenario.Parts(k))
            body.Planned.Add(new ScheduledAction(time + ignition.IgniterLag, ActionKind.Separation, k - 1));
    }

    private string? Refusal(BodyState body, BodyRecorder log, IgnitionParameters guards, double time)
    {
        double sinceLiftOff = time - body.LiftOff;
        if (body.Velocity < guards.MinSpeed)
            return Invariant.Text($"The speed is {body.Velocity:F2} m/s; the guard requires {guards.MinSpeed:F2} m/s or more.");
        if (body.Height < guards.MinHeight || body.Height > guards.MaxHeight)
            return Invariant.Text(
                $"The height is {body.Height:F1} m; the guard requires {Limits(guards.MinHeight, guards.MaxHeight, "F1", "m")}.");
        if (double.IsNaN(body.LiftOff) && (double.IsFinite(guards.Earliest) || double.IsFinite(guards.Latest)))
            return "The stack has not lifted off; the guard counts from lift-off.";
        if (sinceLiftOff < guards.Earliest || sinceLiftOff > guards.Latest)
            return Invariant.Text(
                $"The time from lift-off is {sinceLiftOff:F3} s; the guard requires {Limits(guards.Earliest, guards.Latest, "F3", "s")}.");
        double tilt = body.Motion == BodyMotion.Falling ? Math.PI : Tilt(log);
        return tilt > guards.MaxTilt
            ? Invariant.Text($"The tilt by the gravity-turn proxy is {tilt * 180 / Math.PI:F1} deg; the guard requires "
                + $"{guards.MaxTilt * 180 / Math.PI:F1} deg or less.")
            : null;
    }

    /// <summary>Two limits in words; an infinite one is no limit and is omitted.</summary>
    private static string Limits(double low, double high, string format, string unit)
    {
        string min = low.ToString(format, CultureInfo.InvariantCulture), max = high.ToString(format, CultureInfo.InvariantCulture);
        return double.IsInfinity(high) ? $"{min} {unit} or more" : double.IsInfinity(low)
            ? $"{max} {unit} or less"
            : $"{min} to {max} {unit}";
    }

    /// <summary>
    /// Tilt from vertical [rad] of a gravity turn at the speeds flown: d(gamma)/dt = -(g/v) cos(gamma) from the guide's
    /// elevation, which integrates to asinh(tan(gamma)) = asinh(tan(gamma0)) - integral of g/v dt. Past apogee the nose
    /// points down, whatever the guide was.
    /// </summary>
    private double Tilt(BodyRecorder log) => plan.CosElevation == 0
        ? 0
        : Math.PI / 2 - Math.Atan(Math.Sinh(Math.Asinh(plan.SinElevation / plan.CosElevation) - log.TiltIntegral));

    private void Light(BodyState body, int upper, double ignition, double separation, string reason)
    {
        if (!double.IsNaN(separation))
            body.Planned.Add(new ScheduledAction(separation, ActionKind.Separation, upper - 1));
        body.Planned.Add(new ScheduledAction(ignition, ActionKind.Ignition, upper));
        if (Staging(upper) is { } staging)
            (staging.Lit, staging.Reason, staging.IgnitionTime) = (true, reason, ignition);
    }

    private void StayCold(BodyState body, BodyRecorder log, int upper, string reason)
    {
        FlightState state = Snapshot(body);
        Record(log, FlightEventKind.IgnitionRefused, upper, state, state, reason);
        if (Staging(upper) is { } staging)
            (staging.Lit, staging.Reason) = (false, reason);
    }

    /// <summary>Air, masses and drag for the model of the gap.</summary>
    private BurnThroughState Describe(BodyState body, int lower)
    {
        AirSample air = plan.Site.At(body.Height);
        // Up and down the nose meets the air.
        double q = air.Density_kg_per_m3 * body.Velocity * body.Velocity;
        double mach = Math.Abs(body.Velocity) / air.SoundSpeed_m_per_s;
        double stack = q * plan.Stages[body.Lowest].Drag.HalfArea(mach);
        double ahead = Math.Min(q * plan.Stages[lower + 1].Drag.HalfArea(mach), stack);
        var upper = new BodyState(body) { Lowest = lower + 1 };
        upper.NextCorner(plan);
        double massAhead = upper.Push(plan).Mass0;
        body.NextCorner(plan);
        Propulsion whole = body.Push(plan);
        return FlightFromSi.BurnThrough(
            plan.Stages[lower].Name, plan.Stages[lower + 1].Name, body.Time, body.Height, body.Velocity, mach, air,
            massAhead, whole.Mass0 - massAhead, ahead, stack - ahead, whole.Thrust0);
    }
}
