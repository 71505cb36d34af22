using System.Collections.Immutable;

namespace Staging.Core.Flight;

/// <summary>The flight from a staging that fails to the ground.</summary>
public sealed class FailureCase
{
    private readonly double delay;

    internal FailureCase(string stage, FailureKind kind, double delay, ImmutableArray<BodyFlight> bodies)
    {
        (Stage, Kind, Bodies) = (stage, kind, bodies);
        this.delay = delay;
    }

    /// <summary>Name of the stage that fails.</summary>
    public string Stage { get; }

    /// <summary>The kind of failure.</summary>
    public FailureKind Kind { get; }

    /// <summary>The bodies from that moment to the ground; the first holds the uppermost stage.</summary>
    public ImmutableArray<BodyFlight> Bodies { get; }

    /// <summary>The failure in words.</summary>
    public string Description => Kind switch
    {
        FailureKind.UnlitAndJoined => $"{Stage} stays cold, stages stay joined",
        FailureKind.UnlitAndParted => $"{Stage} stays cold, stages part",
        FailureKind.LitLate => Invariant.Text($"{Stage} lights {delay:G3} s late"),
        _ => $"nothing comes out of {Stage}",
    };

    /// <summary>The body that lands with the most energy; null where none lands.</summary>
    public BodyFlight? HardestLanding =>
        Bodies.Where(b => b.Outcome is FlightOutcome.Landed).MaxBy(b => ((FlightOutcome.Landed)b.Outcome).KineticEnergy.Joules);

    /// <summary>The failure, and how each body ends.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => $"{Description}: {string.Join("; ", Bodies.Select(b => $"{b.Name} {b.Outcome}"))}";
}
