using Staging.Core.Solving;

namespace Staging.Core.Flight;

/// <summary>The wait on the guide.</summary>
internal sealed partial class FlightSimulation
{
    /// <summary>
    /// Holds the stack on the guide until the thrust overcomes weight and friction, and carries out the actions
    /// due meanwhile. Thrust is a straight line and mass a parabola in each segment of the curve, so the moment is the
    /// root of a quadratic.
    /// </summary>
    private void LiftOff(BodyState body, BodyRecorder log)
    {
        double g = plan.Site.Gravity(0);
        while (body.Motion == BodyMotion.Held)
        {
            double due = ExecuteDue(body, log), stop = Math.Min(Math.Min(body.NextCorner(plan), due), latest);
            if (!(body.Burning(plan) || body.MayLight()) || body.Time >= latest)
            {
                lastPush = body.Push(plan);
                End(body, log, new FlightOutcome.NeverLeftGuide(0));
                return;
            }

            FlightSegment segment = SegmentFrom(body);
            double wait = Overcomes(segment, g * segment.GravityShare);
            bool lifts = wait < stop - body.Time;
            double end = lifts ? body.Time + wait : stop;
            RecordRest(log, segment, body.Time, end);
            body.Time = end;
            if (!lifts)
                continue;
            body.Motion = BodyMotion.Guided;
            body.LiftOff = end;
            Record(log, FlightEventKind.LiftOff, body.Highest, Snapshot(body), Snapshot(body));
            PlanTimers(body, TimerStart.LiftOff, 0, end);
            return;
        }
    }

    /// <summary>
    /// Time into a segment at which F0 + s t = w (m0 - f t - f' t^2) + friction; infinite where thrust stays below.
    /// </summary>
    private static double Overcomes(in FlightSegment segment, double weightPerMass)
    {
        Propulsion push = segment.Push;
        double a0 = push.Thrust0 - segment.Friction - weightPerMass * push.Mass0;
        if (a0 > 0)
            return 0;
        double a1 = push.ThrustSlope + weightPerMass * push.MassFlow;
        double a2 = weightPerMass * push.HalfMassFlowSlope;
        double discriminant = a1 * a1 - 4 * a2 * a0;
        double denominator = a1 + Math.Sqrt(Math.Max(discriminant, 0));
        return discriminant < 0 || denominator <= 0 ? double.PositiveInfinity : -2 * a0 / denominator;
    }

    private static void RecordRest(BodyRecorder log, in FlightSegment segment, double from, double to)
    {
        if (!(to > from))
            return;
        log.Begin(segment, rising: false, 0, 0);
        Span<double> initial = stackalloc double[2];
        Span<double> coefficients = stackalloc double[2 * Tsitouras54.DenseDegree];
        initial.Clear();
        coefficients.Clear();
        log.Track?.Accept(from, to - from, new DenseStep(from, to - from, initial, coefficients));
    }
}
