using System.Collections.Immutable;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>
/// Openings one behind the other, such as the holes in the walls of nested tubes: one flow through all, the pressures
/// between them solved for.
/// </summary>
/// <remarks>
/// Steady and adiabatic: the stagnation temperature stays that of the upstream gas, and each jet comes to rest in the
/// space behind its hole, which must be large against the hole; jets aimed at the next hole pass more. Equal holes
/// choke at the last, never at the first.
/// </remarks>
public sealed record HolesInSeries
{
    /// <summary>The openings from side one to side two, 1 to 16.</summary>
    /// <exception cref="ArgumentException">No opening or more than 16.</exception>
    public required ImmutableArray<Opening> Openings
    {
        get;
        init => field = Guard.Set(value).Length is < 1 or > SeriesKernel.MaxMembers
            ? throw new ArgumentException($"Openings has {value.Length} members; it must have between 1 and {SeriesKernel.MaxMembers}.",
                nameof(Openings))
            : value;
    }

    /// <summary>Flow between two gases at rest, positive from one to two.</summary>
    /// <param name="one">Gas on side one.</param>
    /// <param name="two">Gas on side two.</param>
    /// <returns>The flow, the pressures between the openings, and the flow of each.</returns>
    public OpeningsFlow Flow(GasState one, GasState two)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(two);
        int n = Openings.Length;
        bool forward = one.Pressure.Pascals >= two.Pressure.Pascals;
        GasState upstream = forward ? one : two;
        GasState downstream = forward ? two : one;
        var members = new SeriesMember[n];
        for (int i = 0; i < n; i++)
        {
            Opening o = Openings[forward ? i : n - 1 - i];
            members[i] = new SeriesMember(o.Law, new OrificeSize(o.Holes));
        }
        double[] between = new double[n - 1];
        double flow = SeriesKernel.MassFlow(members, Orifice.ToSi(upstream), downstream.Pressure.Pascals, between);
        if (!forward)
            Array.Reverse(between);
        GasState[] states = [one, .. between.Select(p => upstream with { Pressure = Pressure.FromPascals(p) }), two];
        return new OpeningsFlow
        {
            MassFlow = MassFlow.FromKilogramsPerSecond(forward ? flow : -flow),
            Between = [.. between.Select(p => Pressure.FromPascals(p))],
            Members = [.. Openings.Select((o, i) => Orifice.Flow(states[i], states[i + 1], o.Holes, o.Law))],
        };
    }
}
