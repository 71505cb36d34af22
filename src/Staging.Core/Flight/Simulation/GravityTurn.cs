namespace Staging.Core.Flight;

/// <summary>
/// Progress of a gravity turn: the integral of g/v over time. Simpson's rule, halved until two levels agree: just off
/// the guide, where the body is slow, one step may hold a tenfold change of the integrand.
/// </summary>
internal ref struct GravityTurn
{
    /// <summary>Slowest speed that counts [m/s]: at apogee the integral has no bound.</summary>
    public const double Slowest = 1e-6;

    /// <summary>
    /// Difference of two levels at which an interval is done [-]; a milliradian of tilt is a thousand times as much.
    /// </summary>
    private const double Tolerance = 1e-6;

    private const int MaxHalvings = 24;

    private readonly ref FlightStep step;
    private readonly ref TrajectorySystem system;

    private GravityTurn(ref FlightStep step, ref TrajectorySystem system)
    {
        this.step = ref step;
        this.system = ref system;
    }

    /// <summary>The integral over the first part of a step, of a length [s].</summary>
    public static double Over(ref FlightStep step, ref TrajectorySystem system, double length)
    {
        var turn = new GravityTurn(ref step, ref system);
        double start = step.Time, first = turn.Rate(start), middle = turn.Rate(start + 0.5 * length), last = turn.Rate(start + length);
        return turn.Over(start, first, middle, last, length, MaxHalvings);
    }

    private readonly double Over(double start, double first, double middle, double last, double length, int halvings)
    {
        double early = Rate(start + 0.25 * length), late = Rate(start + 0.75 * length);
        double whole = length / 6 * (first + 4 * middle + last), halves = length / 12 * (first + 4 * early + 2 * middle + 4 * late + last);
        if (halvings == 0 || Math.Abs(halves - whole) <= Tolerance)
            return halves + (halves - whole) / 15;
        return Over(start, first, early, middle, 0.5 * length, halvings - 1)
            + Over(start + 0.5 * length, middle, late, last, 0.5 * length, halvings - 1);
    }

    private readonly double Rate(double time)
    {
        (double h, double v) = step.At(time);
        return system.Gravity(h) / Math.Max(v, Slowest);
    }
}
