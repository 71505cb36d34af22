using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>The flow through several openings.</summary>
public sealed class OpeningsFlow
{
    internal OpeningsFlow(MassFlow massFlow, ImmutableArray<Pressure> between, ImmutableArray<OrificeFlow> members) =>
        (MassFlow, Between, Members) = (massFlow, between, members);

    /// <summary>Mass flow from side one to side two; negative the other way.</summary>
    public MassFlow MassFlow { get; }

    /// <summary>
    /// Pressures of the spaces between openings in series, from side one to side two; empty for openings in parallel.
    /// </summary>
    public ImmutableArray<Pressure> Between { get; }

    /// <summary>The flow of each opening, in the order given.</summary>
    public ImmutableArray<OrificeFlow> Members { get; }

    /// <summary>The flow, and the pressures between openings in series.</summary>
    /// <returns>For example <c>3.1 g/s, between the openings 145.2 kPa</c>.</returns>
    public override string ToString() => Invariant.Text($"{MassFlow.GramsPerSecond:G4} g/s")
        + (Between.IsEmpty
            ? ""
            : ", between the openings " + string.Join(", ", Between.Select(p => Invariant.Text($"{p.Kilopascals:G5} kPa"))));
}
