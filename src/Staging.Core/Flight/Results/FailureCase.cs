using System.Collections.Immutable;

namespace Staging.Core.Flight;

/// <summary>A flight on from a staging at which something goes wrong.</summary>
/// <param name="Stage">Name of the stage that fails.</param>
/// <param name="Kind">What goes wrong.</param>
/// <param name="Bodies">The bodies from that moment to the ground; the first holds the uppermost stage.</param>
public sealed record FailureCase(string Stage, FailureKind Kind, ImmutableArray<BodyFlight> Bodies)
{
    /// <summary>What goes wrong, in words.</summary>
    public string Description => Kind switch
    {
        FailureKind.UnlitAndJoined => $"{Stage} stays cold, stages stay joined",
        FailureKind.UnlitAndParted => $"{Stage} stays cold, stages part",
        FailureKind.LitLate => $"{Stage} lights late",
        _ => $"nothing comes out of {Stage}",
    };

    /// <summary>The body that hits the ground with most energy; null where none lands.</summary>
    public BodyFlight? HardestLanding =>
        Bodies.Where(b => b.Outcome is FlightOutcome.Landed).MaxBy(b => ((FlightOutcome.Landed)b.Outcome).KineticEnergy.Joules);
}
