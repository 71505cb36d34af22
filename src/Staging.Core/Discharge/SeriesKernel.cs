using Staging.Core.Solving;

namespace Staging.Core.Discharge;

/// <summary>One opening of a series as plain SI numbers.</summary>
internal readonly struct SeriesMember(IDischargeLaw law, OrificeSize size)
{
    public IDischargeLaw Law { get; } = law;

    public OrificeSize Size { get; } = size;
}

/// <summary>
/// Flow through openings in series without allocation. The unknown is the pressure before the last opening. Its flow is marched upstream, since
/// the flow of every law rises strictly with the upstream pressure, choked or not; downstream it would not decide. The pressure needed before the
/// first opening rises with the unknown, so that the flow through the first opening falls: the two are matched inside a bracket.
/// </summary>
internal static class SeriesKernel
{
    public const int MostMembers = 16;

    /// <summary>Mass flow [kg/s] from the upstream gas through the members in flow order to the pressure at the end [Pa].</summary>
    /// <param name="members">The openings in flow order.</param>
    /// <param name="upstream">The gas before the first opening, of the higher pressure.</param>
    /// <param name="endPressure">Pressure behind the last opening [Pa].</param>
    /// <param name="between">Receives the pressures between the openings [Pa], one fewer than members.</param>
    public static double MassFlow(ReadOnlySpan<SeriesMember> members, in OrificeSide upstream, double endPressure, Span<double> between)
    {
        if (!(upstream.P > endPressure))
        {
            between.Fill(endPressure);
            return 0;
        }
        if (members.Length == 1)
            return Flow(members[0], upstream, upstream.P, endPressure);
        var f = new Mismatch(members, upstream, endPressure, between);
        double atLow = -Flow(members[0], upstream, upstream.P, endPressure);
        double atHigh = f.At(upstream.P);
        (double low, _) = BracketedRoot.Shrink(ref f, endPressure, atLow, upstream.P, atHigh, 0);
        f.At(low);
        return FlowOfGreatestDrop(members, upstream, endPressure, between);
    }

    // All flows agree but for round-off of the pressures, which matters least where the pressure drops most.
    private static double FlowOfGreatestDrop(ReadOnlySpan<SeriesMember> members, in OrificeSide upstream, double endPressure, ReadOnlySpan<double> between)
    {
        int member = 0;
        double from = upstream.P;
        double to = between[0];
        for (int k = 1; k < members.Length; k++)
        {
            double next = k < between.Length ? between[k] : endPressure;
            if (between[k - 1] - next > from - to)
                (member, from, to) = (k, between[k - 1], next);
        }
        return Flow(members[member], upstream, from, to);
    }

    private static double Flow(in SeriesMember m, in OrificeSide gas, double from, double to) =>
        from > to ? OrificeKernel.SignedMassFlow(m.Law, m.Size, new OrificeSide(from, gas.T, gas.Gas), new OrificeSide(to, gas.T, gas.Gas)) : 0;

    /// <summary>Flow of the last opening, marched upstream, less the flow that comes through the first.</summary>
    private readonly ref struct Mismatch(ReadOnlySpan<SeriesMember> members, OrificeSide upstream, double endPressure, Span<double> between) : IScalarFunction
    {
        private readonly ReadOnlySpan<SeriesMember> members = members;
        private readonly Span<double> between = between;

        public double At(double x)
        {
            int last = members.Length - 1;
            double flow = Flow(members[last], upstream, x, endPressure);
            between[last - 1] = x;
            for (int k = last - 1; k >= 1; k--)
            {
                var need = new FlowNeed(members[k], upstream, between[k], flow);
                double atTop = need.At(upstream.P);
                if (atTop <= 0)
                    return -atTop + flow;
                (double low, _) = flow > 0 ? BracketedRoot.Shrink(ref need, between[k], -flow, upstream.P, atTop, 0) : (between[k], 0);
                between[k - 1] = low;
            }
            return flow - Flow(members[0], upstream, upstream.P, between[0]);
        }
    }

    /// <summary>Flow from a pressure x through one opening less the flow it must pass.</summary>
    private readonly struct FlowNeed(SeriesMember member, OrificeSide gas, double downstream, double flow) : IScalarFunction
    {
        public double At(double x) => Flow(member, gas, x, downstream) - flow;
    }
}
