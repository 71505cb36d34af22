using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>The flow through several openings.</summary>
public sealed record OpeningsFlow
{
    /// <summary>Mass flow from side one to side two; negative the other way.</summary>
    public required MassFlow MassFlow { get; init; }

    /// <summary>
    /// Pressures of the spaces between openings in series, from side one to side two; empty for openings in parallel.
    /// </summary>
    public required ImmutableArray<Pressure> Between { get; init; }

    /// <summary>The flow of each opening, in the order given.</summary>
    public required ImmutableArray<OrificeFlow> Members { get; init; }
}
