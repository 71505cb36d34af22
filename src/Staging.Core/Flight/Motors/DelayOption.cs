using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The effect of a delay of the uppermost motor; see <see cref="FlightPlan.ChooseDelay"/>.</summary>
public sealed class DelayOption
{
    /// <summary>
    /// Tolerance of a delay: a share of it [-] or a time [s], whichever is more (NFPA 1125;
    /// from memory).
    /// </summary>
    private const double ToleranceShare = 0.2, ToleranceTime = 1.5;

    private DelayOption(BodyFlight flight, double burnout, double apogee, double delay)
    {
        double slack = Math.Max(ToleranceShare * delay, ToleranceTime);
        (double speed, double height) = At(flight, burnout + delay);
        (double early, _) = At(flight, burnout + Math.Max(0, delay - slack));
        (double late, _) = At(flight, burnout + delay + slack);
        Delay = Duration.FromSeconds(delay);
        Ideal = Duration.FromSeconds(apogee - burnout);
        Speed = Speed.FromMetersPerSecond(speed);
        Height = Length.FromMeters(height);
        SpeedWithTolerance = Speed.FromMetersPerSecond(Math.Max(early, late));
    }

    /// <summary>The delay [s].</summary>
    public Duration Delay { get; }

    /// <summary>
    /// The ideal delay [s], the same for every option: time from the end of the main motor's thrust history to
    /// apogee with nothing ejected.
    /// </summary>
    public Duration Ideal { get; }

    /// <summary>
    /// Speed along the flight line at ejection, without sign [m/s]; off a leaning guide a real flight keeps a
    /// horizontal speed at apogee that this leaves out.
    /// </summary>
    public Speed Speed { get; }

    /// <summary>Height at ejection [m]; zero where the body would be on the ground by then.</summary>
    public Length Height { get; }

    /// <summary>
    /// The greater speed at ejection if the delay burns 20 % or 1.5 s, whichever is more, too short or too long [m/s]
    /// (the tolerance of NFPA 1125; from memory).
    /// </summary>
    public Speed SpeedWithTolerance { get; }

    /// <summary>The option on one line.</summary>
    /// <returns>The delay, and speed and height at ejection.</returns>
    public override string ToString() => Invariant.Text(
        $"delay {Delay.Seconds:G4} s: ejects at {Speed.MetersPerSecond:F1} m/s, {Height.Meters:F1} m high, ")
        + Invariant.Text($"at {SpeedWithTolerance.MetersPerSecond:F1} m/s at the ends of its tolerance");

    /// <summary>All options from one flight without ejection, slowest ejection first.</summary>
    internal static ImmutableArray<DelayOption> All(BodyFlight flight, double burnout, double apogee, IEnumerable<Duration> delays) =>
        [.. delays.Select(d => new DelayOption(flight, burnout, apogee, d.Seconds)).OrderBy(o => o.Speed.MetersPerSecond)];

    /// <summary>Speed and height at a time; after the landing, those of the landing.</summary>
    private static (double Speed, double Height) At(BodyFlight flight, double time)
    {
        FlightState state = flight.At(Duration.FromSeconds(Math.Min(time, flight.End.Seconds)));
        return (Math.Abs(state.Velocity.MetersPerSecond), Math.Max(0, state.Height.Meters));
    }
}
