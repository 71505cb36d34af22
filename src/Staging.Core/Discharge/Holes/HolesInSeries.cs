using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>Openings in series; see <see cref="Orifice.InSeries"/>.</summary>
internal static class HolesInSeries
{
    public static OpeningsFlow Flow(GasState one, GasState two, EquatableArray<Opening> openings)
    {
        if (openings.Length is < 1 or > SeriesKernel.MaxMembers)
            throw new ArgumentException($"There are {openings.Length} openings; it must be between 1 and {SeriesKernel.MaxMembers}.",
                nameof(openings));
        int n = openings.Length;
        bool forward = one.Pressure.Pascals >= two.Pressure.Pascals;
        GasState upstream = forward ? one : two;
        GasState downstream = forward ? two : one;
        var members = new SeriesMember[n];
        for (int i = 0; i < n; i++)
        {
            Opening o = openings[forward ? i : n - 1 - i];
            members[i] = new SeriesMember(o.Law, new OrificeSize(o.Holes));
        }
        double[] between = new double[n - 1];
        double flow = SeriesKernel.MassFlow(members, Orifice.ToSi(upstream), downstream.Pressure.Pascals, between);
        if (!forward)
            Array.Reverse(between);
        GasState[] states = [one, .. between.Select(p => upstream with { Pressure = Pressure.FromPascals(p) }), two];
        return new OpeningsFlow(
            MassFlow.FromKilogramsPerSecond(forward ? flow : -flow),
            [.. between.Select(p => Pressure.FromPascals(p))],
            [.. openings.Select((o, i) => Orifice.Flow(states[i], states[i + 1], o.Holes, o.Law))]);
    }
}
