using Staging.Core.Solving;

namespace Staging.Core.Discharge;

/// <summary>
/// Flow through openings in series, without allocation. For two openings the unknown is the pressure between them at
/// which both pass the same flow. For more the unknown is the flow itself: the pressures are computed upstream from the
/// end pressure, because the flow of every law rises strictly with the upstream pressure, choked or not, while a choked
/// flow does not determine the downstream pressure. The pressure needed behind the first opening rises with the flow,
/// and the flow through the first opening falls with that pressure, so there is one solution.
/// </summary>
/// <remarks>Each surplus is a flow less the flow that it has to equal, so its root is the solution.</remarks>
internal static class SeriesKernel
{
    public const int MaxMembers = 16;

    /// <summary>
    /// Mass flow [kg/s] from the upstream gas through the members in flow order to the pressure at the end [Pa].
    /// </summary>
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
        return members.Length switch
        {
            1 => Flow(members[0], upstream, upstream.P, endPressure),
            2 => OfTwo(members, upstream, endPressure, between),
            _ => OfMany(members, upstream, endPressure, between),
        };
    }

    private static double OfTwo(ReadOnlySpan<SeriesMember> members, in OrificeSide upstream, double endPressure, Span<double> between)
    {
        var f = new TwoOpeningSurplus(members[0], members[1], upstream, endPressure);
        double atLow = -Flow(members[0], upstream, upstream.P, endPressure);
        double atHigh = Flow(members[1], upstream, upstream.P, endPressure);
        (double p, _) = BracketedRoot.Shrink(ref f, endPressure, atLow, upstream.P, atHigh, 0);
        between[0] = p;
        // Both flows agree up to the round-off of p, which matters least where the pressure falls most.
        return upstream.P - p > p - endPressure
            ? Flow(members[0], upstream, upstream.P, p)
            : Flow(members[1], upstream, p, endPressure);
    }

    private static double OfMany(ReadOnlySpan<SeriesMember> members, in OrificeSide upstream, double endPressure, Span<double> between)
    {
        double most = double.PositiveInfinity;
        foreach (SeriesMember m in members)
            most = Math.Min(most, Flow(m, upstream, upstream.P, endPressure));
        var f = new SeriesSurplus(members, upstream, endPressure, between);
        double atMost = f.At(most);
        if (atMost <= 0)
            return most;
        (double flow, _) = BracketedRoot.Shrink(ref f, 0, -Flow(members[0], upstream, upstream.P, endPressure), most, atMost, 0);
        f.At(flow);
        return flow;
    }

    private static double Flow(in SeriesMember m, in OrificeSide gas, double from, double to) =>
        OrificeKernel.SignedMassFlow(m.Law, m.Size, new OrificeSide(from, gas.T, gas.Gas), new OrificeSide(to, gas.T, gas.Gas));

    /// <summary>Flow out of the space between two openings less the flow into it, at a pressure there.</summary>
    private readonly struct TwoOpeningSurplus(SeriesMember first, SeriesMember second, OrificeSide gas, double endPressure)
        : IScalarFunction
    {
        public double At(double x) => Flow(second, gas, x, endPressure) - Flow(first, gas, gas.P, x);
    }

    /// <summary>
    /// A flow less the flow through the first opening to the pressure that the other openings need for it.
    /// </summary>
    private readonly ref struct SeriesSurplus(ReadOnlySpan<SeriesMember> members, OrificeSide gas, double endPressure, Span<double> between)
        : IScalarFunction
    {
        private readonly ReadOnlySpan<SeriesMember> members = members;
        private readonly Span<double> between = between;

        public double At(double x)
        {
            double p = endPressure;
            for (int k = members.Length - 1; k >= 1; k--)
            {
                var surplus = new OneOpeningSurplus(members[k], gas, p, x);
                double atTop = surplus.At(gas.P);
                // The flow exceeds what this opening passes at full pressure: the surplus is at least the difference.
                if (atTop <= 0)
                    return x - atTop;
                (p, _) = BracketedRoot.Shrink(ref surplus, p, -x, gas.P, atTop, 0);
                between[k - 1] = p;
            }
            return x - Flow(members[0], gas, gas.P, p);
        }
    }

    /// <summary>Flow through one opening from a pressure less a given flow.</summary>
    private readonly struct OneOpeningSurplus(SeriesMember member, OrificeSide gas, double downstream, double flow) : IScalarFunction
    {
        public double At(double x) => Flow(member, gas, x, downstream) - flow;
    }
}
