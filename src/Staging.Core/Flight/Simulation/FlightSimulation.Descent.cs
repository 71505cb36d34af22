namespace Staging.Core.Flight;

/// <summary>The transition from the full equation to the settled descent.</summary>
internal sealed partial class FlightSimulation
{
    /// <summary>Whether a body descends with a fixed drag area and no planned action.</summary>
    private bool Descends(BodyState body) =>
        body.Motion == BodyMotion.Falling && body.Device >= 0 && body.Planned.Count == 0 && !body.Burning(plan);

    /// <summary>
    /// Follows a descent to the ground by quadrature once it is fast enough; before that, sets the stop time of the
    /// full equation from v = v_s tanh(g t/v_s) in air that does not change.
    /// </summary>
    private bool SettledDescent(BodyState body, BodyRecorder log, in FlightSegment segment, ref double stop)
    {
        var law = new DescentLaw(plan.Site, 2 * segment.Line.Intercept / segment.Push.Mass0);
        SteadyDescent steady = SteadyDescent.At(law, body.Height);
        if (!steady.Settles)
            return false;
        double speed = Math.Abs(body.Velocity), settled = Math.Sqrt(steady.SpeedSquared);
        // The whole way at the speed near the ground, where it is least, and the time to reach it: a body that may
        // exceed the latest time is flown step by step.
        double longest = body.Height / Math.Sqrt(SteadyDescent.At(law, 0).SpeedSquared) + settled / steady.Gravity;
        if (body.Time + longest > latest)
            return false;
        if (speed * speed < QuasiSteadyDescent.MinShare * steady.SpeedSquared)
        {
            double aim = Math.Sqrt(QuasiSteadyDescent.AimedShare);
            stop = Math.Min(stop, body.Time + settled / steady.Gravity * (Math.Atanh(aim) - Math.Atanh(speed / settled)));
            return false;
        }

        log.Begin(segment, rising: false, body.Height, body.Velocity);
        (double time, double velocity, int calls) = QuasiSteadyDescent.ToGround(law, body.Time, body.Height, body.Velocity, log.Track);
        otherCalls += calls;
        (body.Time, body.Height, body.Velocity) = (time, 0, velocity);
        Land(body, log);
        return true;
    }
}
