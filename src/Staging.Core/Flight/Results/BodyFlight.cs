using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The flight of one body: its timeline, its outcome and, where kept, its whole trajectory.</summary>
public sealed partial class BodyFlight
{
    private readonly FlightPlan plan;
    private readonly PlanParameters parameters;
    private readonly BodyRecorder log;
    private readonly double burntPropellant;

    internal BodyFlight(FlightPlan plan, PlanParameters parameters, BodyRecorder log)
    {
        this.plan = plan;
        this.parameters = parameters;
        this.log = log;
        Events = Timeline(parameters, log);
        Stages = [.. Enumerable.Range(log.LowestStage, log.HighestStage - log.LowestStage + 1).Select(k => plan.Stages[k].Name)];
        Outcome = log.Outcome!;
        for (int k = log.LowestStage; k <= log.HighestStage; k++)
        {
            if (!double.IsNaN(log.IgnitedAt[k]))
                burntPropellant += plan.Stages[k].PropellantBurntBy(Duration.FromSeconds(log.EndTime - log.IgnitedAt[k])).Kilograms;
        }
    }

    /// <summary>Names of the stages it ended with, lowest first.</summary>
    public ImmutableArray<string> Stages { get; }

    /// <summary>The stages it ended with, as one name.</summary>
    public string Name => string.Join(" + ", Stages);

    /// <summary>How it ended.</summary>
    public FlightOutcome Outcome { get; }

    /// <summary>The events, in order of time.</summary>
    public ImmutableArray<FlightEvent> Events { get; }

    /// <summary>First moment of its record [s].</summary>
    public Duration Start => Duration.FromSeconds(log.StartTime);

    /// <summary>Last moment of its record [s].</summary>
    public Duration End => Duration.FromSeconds(log.EndTime);

    /// <summary>Greatest height above the site [m]; null without apogee.</summary>
    public Length? Apogee => double.IsNaN(log.Apogee.Height) ? null : Length.FromMeters(log.Apogee.Height);

    /// <summary>Time of apogee [s]; null without apogee.</summary>
    public Duration? ApogeeTime => double.IsNaN(log.Apogee.Time) ? null : Duration.FromSeconds(log.Apogee.Time);

    /// <summary>Greatest speed on the way up [m/s], within this record.</summary>
    public Speed MaximumSpeed => Speed.FromMetersPerSecond(log.Fastest.Speed);

    /// <summary>
    /// An estimate of how far the wind carries it [m]: wind times the time from apogee (or from the start of the
    /// record, if later) to the ground. The flight itself is flown in still air; weathercocking on the way up is not
    /// included. Null where it does not land.
    /// </summary>
    public Length? DriftEstimate => Outcome is FlightOutcome.Landed
        ? Length.FromMeters(parameters.Wind * (log.EndTime
            - Math.Max(log.StartTime, double.IsNaN(log.Apogee.Time) ? log.StartTime : log.Apogee.Time)))
        : null;

    /// <summary>
    /// Horizontal distance of apogee from the guide along the launch direction [m], on the straight line of the guide;
    /// zero straight up; null without apogee. A lower bound: a real flight turns over, so without air its apogee lies 2
    /// sin^2(theta) times as far (1.9 times at 75 degrees), and it keeps its horizontal speed on the way down.
    /// </summary>
    public Length? ApogeeRange => double.IsNaN(log.Apogee.Height)
        ? null
        : Length.FromMeters(log.Apogee.Height / parameters.SinElevation * parameters.CosElevation);

    /// <summary>
    /// An estimate of the load on the lines when the device opens [N]: C_x rho/2 v^2 CdA at the moment it comes out.
    /// That is the load of a body too heavy to slow down while the canopy fills; a light model has less, so this is an
    /// upper bound. Off a leaning guide the body has a horizontal speed at apogee that a straight-line flight does not
    /// have: there the load near apogee comes out too low.
    /// </summary>
    /// <param name="openingFactor">
    /// Peak load over steady load C_x [-], 1 to 3; 1.7 for flat circular and 1.8 for conical canopies (T. W. Knacke,
    /// NWC TP 6575, 1991, table 5-1; from memory).
    /// </param>
    /// <returns>The load; null where no device opened: a body that tumbles has none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Force? OpeningLoadEstimate(double openingFactor)
    {
        Guard.In(openingFactor, 1, 3, property: nameof(openingFactor));
        if (Find(FlightEventKind.DeviceOpens) is not { } opens)
            return null;
        Recovery recovery = plan.Stages.First(x => x.Name == opens.Stage).Recovery;
        if (recovery.Kind == RecoveryKind.Tumbling)
            return null;
        double v = opens.Before.Velocity.MetersPerSecond, rho = parameters.Site.At(opens.Before.Height.Meters).Density_kg_per_m3;
        return Force.FromNewtons(openingFactor * 0.5 * rho * v * v * recovery.DragArea.SquareMeters);
    }

    /// <summary>Mass at the end of its record [kg].</summary>
    public Mass MassAtEnd => Mass.FromKilograms(log.Mass);

    /// <summary>Propellant that the motors of its stages have burnt, from the impulse they delivered [kg].</summary>
    public Mass BurntPropellant => Mass.FromKilograms(burntPropellant);

    /// <summary>The first event of a kind; null where it did not happen.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="stage">Name of the stage concerned; null takes any.</param>
    /// <returns>The event.</returns>
    public FlightEvent? Find(FlightEventKind kind, string? stage = null)
    {
        foreach (FlightEvent e in Events)
        {
            if (e.Kind == kind && (stage is null || e.Stage == stage))
                return e;
        }

        return null;
    }

    /// <summary>The flight on one line.</summary>
    /// <returns>
    /// For example <c>sustainer: apogee 312.4 m at 6.21 s, lands at 85.2 s with 4.1 m/s and 0.5 J.</c>
    /// </returns>
    public override string ToString() => Apogee is { } apogee
        ? Invariant.Text($"{Name}: apogee {apogee.Meters:F1} m at {log.Apogee.Time:F2} s, {Outcome}.")
        : $"{Name}: {Outcome}.";

    private static ImmutableArray<FlightEvent> Timeline(PlanParameters parameters, BodyRecorder log)
    {
        var events = ImmutableArray.CreateBuilder<FlightEvent>(log.Events.Count + 1);
        events.AddRange(log.Events);
        if (log.Fastest.Speed > 0)
        {
            var state = new FlightState(log.Fastest.Time, log.Fastest.Height, log.Fastest.Speed, log.Fastest.Mass, log.Fastest.Thrust);
            int at = 0;
            while (at < events.Count && events[at].Time.Seconds <= log.Fastest.Time)
                at++;
            events.Insert(at, new FlightEvent(FlightEventKind.MaximumSpeed, parameters.Stages[log.HighestStage].Name, state, state, null));
        }

        return events.DrainToImmutable();
    }
}
