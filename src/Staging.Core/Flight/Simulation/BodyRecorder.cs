using Staging.Core.Solving;

namespace Staging.Core.Flight;

/// <summary>
/// The record of one body in flight: steps, segments, events and the greatest speed on the way up.
/// </summary>
internal sealed class BodyRecorder(bool keepTrack)
{
    /// <summary>Bracket at which the time of greatest speed counts as located [s].</summary>
    private const double TimeWidth = 1e-9;

    private Propulsion push;
    private bool tracksSpeed;

    /// <summary>The trajectory as polynomials; null where it is not kept.</summary>
    public DenseTrack? Track { get; } = keepTrack ? new DenseTrack(2, Tsitouras54.DenseDegree) : null;

    public List<FlightSegment> Segments { get; } = new(keepTrack ? 48 : 0);

    public List<FlightEvent> Events { get; } = new(16);

    public FlightOutcome? Outcome { get; set; }

    /// <summary>
    /// Greatest speed on the way up [m/s]; its time [s] and height [m], and the mass [kg] and thrust [N] there.
    /// </summary>
    public (double Speed, double Time, double Height, double Mass, double Thrust) Fastest { get; private set; }

    /// <summary>Time of ignition of each stage [s]; not-a-number where it stayed cold.</summary>
    public double[] IgnitedAt { get; set; } = [];

    /// <summary>Greatest height [m] and its time [s].</summary>
    public (double Height, double Time) Apogee { get; set; } = (double.NaN, double.NaN);

    /// <summary>
    /// Integral of g/v over time from the end of the guide [-]: the progress of a gravity turn; kept only where
    /// a guard limits the tilt.
    /// </summary>
    public double TiltIntegral { get; set; }

    public bool TracksTilt { get; set; }

    public double StartTime { get; set; }

    public double EndTime { get; set; }

    public int LowestStage { get; set; }

    public int HighestStage { get; set; }

    /// <summary>Mass at the end [kg].</summary>
    public double Mass { get; set; }

    /// <summary>Accelerations evaluated to find the greatest speed.</summary>
    public int Calls { get; private set; }

    /// <summary>A new segment begins, at a height [m] and velocity [m/s].</summary>
    public void Begin(in FlightSegment next, bool rising, double height, double velocity)
    {
        push = next.Push;
        tracksSpeed = rising;
        if (rising)
            Keep(next.Start, height, velocity);
        if (Track is not null)
            Segments.Add(next);
    }

    /// <summary>
    /// An integrated step, of which the first <paramref name="length"/> [s] count; none, where an event fell on its
    /// start.
    /// </summary>
    public void Take(ref FlightStep step, ref TrajectorySystem system, double length)
    {
        if (Track is not null && length > 0)
        {
            Span<double> initial = stackalloc double[2], coefficients = stackalloc double[2 * Tsitouras54.DenseDegree];
            step.CopyDense(initial, coefficients);
            Track.Accept(step.Time, length, new DenseStep(step.Time, step.H, initial, coefficients));
        }

        if (tracksSpeed)
            FindFastest(ref step, ref system, length);
        if (TracksTilt)
            TiltIntegral += GravityTurn.Over(ref step, ref system, length);
    }

    /// <summary>
    /// Looks at the ends of a step, and inside where the acceleration changes sign: there with a step of its own, since
    /// the dense output is an order less accurate than a step, and is not controlled by the tolerance where a segment
    /// is shorter than the allowed steps. A step that is only drawn has nothing better.
    /// </summary>
    private void FindFastest(ref FlightStep step, ref TrajectorySystem system, double length)
    {
        bool whole = length == step.H;
        if (step.A1 > 0 && step.AEnd < 0)
        {
            var acceleration = new AccelerationOnStep(ref system, ref step);
            double end = step.Time + length, last = whole ? step.AEnd : acceleration.At(end);
            if (last < 0)
            {
                (_, double at) = BracketedRoot.Shrink(ref acceleration, step.Time, step.A1, end, last, TimeWidth);
                Calls += acceleration.Calls;
                if (step.IsDrawn)
                {
                    (double height, double speed) = step.At(at);
                    Keep(at, height, speed);
                    return;
                }

                FlightStep exact = step;
                exact.Advance(ref system, at - step.Time);
                Keep(at, exact.HeightEnd, exact.VelocityEnd);
                Calls += FlightStep.NewCalls;
                return;
            }
        }

        if (whole)
        {
            Keep(step.Time + length, step.HeightEnd, step.VelocityEnd);
        }
        else
        {
            (double h, double v) = step.At(step.Time + length);
            Keep(step.Time + length, h, v);
        }
    }

    private void Keep(double time, double height, double speed)
    {
        if (speed > Fastest.Speed)
            Fastest = (speed, time, height, push.Mass(time), push.Thrust(time));
    }

    private ref struct AccelerationOnStep : IScalarFunction
    {
        private readonly ref TrajectorySystem system;
        private readonly ref FlightStep step;

        public AccelerationOnStep(ref TrajectorySystem system, ref FlightStep step)
        {
            this.system = ref system;
            this.step = ref step;
        }

        /// <summary>Evaluations so far.</summary>
        public int Calls { get; private set; }

        public double At(double x)
        {
            Calls++;
            (double h, double v) = step.At(x);
            return system.Acceleration(x, h, v);
        }
    }
}
