using Staging.Core.Solving;

namespace Staging.Core.Flight;

/// <summary>What is written down while one body flies: steps, pieces, events and the greatest speed on the way up.</summary>
internal sealed class BodyLog(bool keepTrack) : IStepSink
{
    private TrajectorySystem current;
    private FlightPiece currentPiece;
    private bool watchSpeed;

    /// <summary>The course as polynomials; null where it is not kept.</summary>
    public DenseTrack? Track { get; } = keepTrack ? new DenseTrack(2, Tsitouras54.DenseDegree) : null;

    public List<FlightPiece> Pieces { get; } = new(keepTrack ? 48 : 0);

    public List<FlightEvent> Events { get; } = new(16);

    public FlightOutcome? Outcome { get; set; }

    /// <summary>Greatest speed on the way up [m/s]; when [s], where [m], and mass [kg] and thrust [N] then.</summary>
    public (double Speed, double Time, double Height, double Mass, double Thrust) Fastest { get; private set; }

    /// <summary>When each stage lit [s]; not-a-number where it stayed cold.</summary>
    public double[] IgnitedAt { get; set; } = [];

    /// <summary>Greatest height [m] and when [s].</summary>
    public (double Height, double Time) Apogee { get; set; } = (double.NaN, double.NaN);

    /// <summary>Integral of g/v over time from the end of the guide [-]: how far a gravity turn has bent; kept only where a guard asks for tilt.</summary>
    public double Bend { get; private set; }

    public bool FollowBend { get; set; }

    public double StartTime { get; set; }

    public double EndTime { get; set; }

    public int LowestStage { get; set; }

    public int HighestStage { get; set; }

    /// <summary>Mass at the end [kg].</summary>
    public double Mass { get; set; }

    public void Begin(in FlightPiece piece, in TrajectorySystem system, bool rising)
    {
        current = system;
        currentPiece = piece;
        watchSpeed = rising;
        if (Track is not null)
            Pieces.Add(piece);
    }

    public void Accept(double start, double length, in DenseStep step)
    {
        Track?.Accept(start, length, step);
        if (watchSpeed)
            FindFastest(start, length, step);
        if (FollowBend)
            AddBend(start, length, step);
    }

    /// <summary>Simpson's rule over a step: a proxy asks for no more.</summary>
    private void AddBend(double start, double length, in DenseStep step)
    {
        Span<double> y = stackalloc double[2];
        double sum = 0;
        for (int i = 0; i <= 2; i++)
        {
            step.At(start + 0.5 * i * length, y);
            sum += (i == 1 ? 4 : 1) * current.Gravity(y[0]) / Math.Max(y[1], double.Epsilon);
        }

        Bend += sum * length / 6;
    }

    /// <summary>Looks at the ends of a step, and inside where the acceleration changes sign.</summary>
    private void FindFastest(double start, double length, in DenseStep step)
    {
        int n = step.Initial.Length;
        double fraction = length / step.Step;
        double slopeAtStart = step.Coefficients[1];
        double slopeAtEnd = 0, velocityAtEnd = 0;
        for (int row = step.Coefficients.Length - n, power = row / n + 1; row >= 0; row -= n, power--)
        {
            slopeAtEnd = slopeAtEnd * fraction + power * step.Coefficients[row + 1];
            velocityAtEnd = (velocityAtEnd + step.Coefficients[row + 1]) * fraction;
        }

        velocityAtEnd += step.Initial[1];
        Keep(step, start + length, velocityAtEnd);
        if (slopeAtStart > 0 && slopeAtEnd < 0 && Math.Max(step.Initial[1], velocityAtEnd) * (1 + MostInside) > Fastest.Speed)
        {
            var acceleration = new AccelerationOnStep(ref current, step);
            double a0 = acceleration.At(start), a1 = acceleration.At(start + length);
            if (a0 > 0 && a1 < 0)
            {
                (_, double at) = BracketedRoot.Shrink(ref acceleration, start, a0, start + length, a1, TimeWidth);
                Span<double> y = stackalloc double[2];
                step.At(at, y);
                Keep(step, at, y[1]);
            }
        }
    }

    /// <summary>A maximum inside a step is not more than this share above its ends, or the step would be too long for its tolerance [-].</summary>
    private const double MostInside = 0.5;

    /// <summary>Bracket at which the time of greatest speed counts as located [s].</summary>
    private const double TimeWidth = 1e-9;

    private void Keep(in DenseStep step, double time, double speed)
    {
        if (!(speed > Fastest.Speed))
            return;
        Span<double> y = stackalloc double[2];
        step.At(time, y);
        Fastest = (speed, time, y[0], currentPiece.Mass(time), currentPiece.Thrust(time));
    }

    private ref struct AccelerationOnStep : IScalarFunction
    {
        private readonly ref TrajectorySystem system;
        private readonly DenseStep step;

        public AccelerationOnStep(ref TrajectorySystem system, DenseStep step)
        {
            this.system = ref system;
            this.step = step;
        }

        public readonly double At(double x)
        {
            Span<double> y = stackalloc double[2];
            step.At(x, y);
            return system.Acceleration(x, y[0], y[1]);
        }
    }
}
