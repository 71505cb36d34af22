using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>Chooses the delay of the uppermost motor.</summary>
public static class DelayChooser
{
    private const double ToleranceShare = 0.2;
    private const double ToleranceTime = 1.5;

    /// <summary>
    /// Flies the uppermost stage once without ejection and reads, for each delay on offer, how fast and how high it
    /// would be when the charge fires. One flight serves all delays, because nothing changes before the charge.
    /// </summary>
    /// <param name="plan">The plan; the delay of its uppermost motor does not matter.</param>
    /// <param name="delaysOnOffer">Delays to be had [s], 0 to 100 s each.</param>
    /// <param name="options">How to compute; null takes the defaults.</param>
    /// <param name="cancellationToken">Stops the run.</param>
    /// <returns>
    /// The ideal delay and what each on offer does; null where the uppermost stage never lit or found no apogee after
    /// burnout.
    /// </returns>
    /// <exception cref="InvalidModelException">The plan does not hang together.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A delay outside its range.</exception>
    public static DelayChoice? ChooseDelay(
        this FlightPlan plan, ImmutableArray<Duration> delaysOnOffer, FlightOptions? options = null,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        foreach (Duration delay in Guard.Set(delaysOnOffer, nameof(delaysOnOffer)))
            Guard.In(delay, 0, 100, nameof(delaysOnOffer));
        InvalidModelException.ThrowOnError(plan.Check());
        Stage top = plan.Stages[^1] with { Recovery = new Recovery.Ballistic() };
        FlightPlan bare = plan with { Stages = plan.Stages.Items.SetItem(plan.Stages.Length - 1, top) };
        BodyFlight flight = bare.Fly((options ?? FlightOptions.Default) with { Scope = FlightScope.UppermostStage, KeepTracks = true },
            cancellationToken: cancellationToken).Main;
        if (flight.Find(FlightEventKind.Ignition, top.Name) is not { } ignition || flight.ApogeeTime is not { } apogee)
            return null;
        // Delays count from the end of the main motor's own curve, whatever burns beside it.
        Duration burnout = ignition.Time + top.Motor.Thrust.BurnTime;
        return apogee < burnout
            ? null
            : new DelayChoice(apogee - burnout, [.. delaysOnOffer.Select(d => Option(flight, burnout.Seconds, apogee.Seconds, d.Seconds))]);
    }

    private static DelayOption Option(BodyFlight flight, double burnout, double apogee, double delay)
    {
        double slack = Math.Max(ToleranceShare * delay, ToleranceTime);
        (double speed, double height) = At(flight, burnout + delay);
        (double early, _) = At(flight, burnout + Math.Max(0, delay - slack));
        (double late, _) = At(flight, burnout + delay + slack);
        return new DelayOption(
            Duration.FromSeconds(delay), Speed.FromMetersPerSecond(speed), Length.FromMeters(height),
            Duration.FromSeconds(burnout + delay - apogee), Speed.FromMetersPerSecond(Math.Max(early, late)));
    }

    /// <summary>Speed and height at a time; after the landing, those of the landing.</summary>
    private static (double Speed, double Height) At(BodyFlight flight, double time)
    {
        FlightState state = flight.At(Duration.FromSeconds(Math.Min(time, flight.End.Seconds)));
        return (Math.Abs(state.Velocity.MetersPerSecond), Math.Max(0, state.Height.Meters));
    }
}
