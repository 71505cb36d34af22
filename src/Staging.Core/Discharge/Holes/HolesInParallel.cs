using System.Collections.Immutable;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>Openings side by side between the same two spaces: their flows add.</summary>
public sealed record HolesInParallel
{
    /// <summary>The openings, at least one.</summary>
    /// <exception cref="ArgumentException">No opening.</exception>
    public required ImmutableArray<Opening> Openings
    {
        get;
        init => field = Guard.Set(value).IsEmpty
            ? throw new ArgumentException("Openings is empty; it needs at least one.", nameof(Openings))
            : value;
    }

    /// <summary>Flow between two gases at rest, positive from one to two.</summary>
    /// <param name="one">Gas on side one.</param>
    /// <param name="two">Gas on side two.</param>
    /// <returns>The flow of all and of each.</returns>
    public OpeningsFlow Flow(GasState one, GasState two)
    {
        ImmutableArray<OrificeFlow> members = [.. Openings.Select(o => Orifice.Flow(one, two, o.Holes, o.Law))];
        return new OpeningsFlow
        {
            MassFlow = MassFlow.FromKilogramsPerSecond(members.Sum(m => m.MassFlow.KilogramsPerSecond)),
            Between = [],
            Members = members,
        };
    }
}
