using Staging.Core.Discharge;

namespace Staging.Core.Gaps;

/// <summary>Holes that lead out of a jacket.</summary>
public sealed record JacketOpening
{
    /// <summary>The holes.</summary>
    public required VentHoles Holes { get; init => field = Guard.NotNull(value); }

    /// <summary>Where they lead: outside, or into another jacket.</summary>
    public required VentTarget To { get; init => field = Guard.NotNull(value); }
}
