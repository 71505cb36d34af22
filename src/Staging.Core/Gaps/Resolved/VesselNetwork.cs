namespace Staging.Core.Gaps.Resolved;

/// <summary>
/// Stirred volumes joined by holes to each other and to the outside: all flows together, by the midpoint rule in substeps no longer than the busiest
/// volume allows. The laws are those of the lumped models.
/// </summary>
internal sealed class VesselNetwork(GapParameters p, int count, HoleLink[] links)
{
    /// <summary>Share of the way to one pressure, and of the mass, that one substep may go in the busiest volume [-]; the midpoint rule errs by its cube.</summary>
    private const double SubstepShare = 0.25;

    /// <summary>Pressure difference over pressure below which nothing passes [-]: round-off of the law.</summary>
    private const double Settled = 1e-12;

    private readonly Parcel[] half = new Parcel[count];
    private readonly Zone[] zones = new Zone[count];
    private readonly double[] pressures = new double[count];
    private readonly double[] rates = new double[count];
    private readonly double[] flows = new double[links.Length];
    private readonly HolePassed[] passed = new HolePassed[links.Length];

    /// <summary>What each volume holds.</summary>
    public Parcel[] Gas { get; } = new Parcel[count];

    /// <summary>Size of each volume [m3].</summary>
    public double[] Volumes { get; } = new double[count];

    /// <summary>Speed with which gas leaves each volume, besides what the holes give it [m/s]: it comes to rest in the next one.</summary>
    public double[] Speeds { get; } = new double[count];

    /// <summary>What passed each link in the last step.</summary>
    public ReadOnlySpan<HolePassed> Passed => passed;

    public double PressureOf(int volume) => Gas[volume].Zone(p).PressureVolume / Volumes[volume];

    /// <summary>Lets everything flow for a time [s].</summary>
    public void Pass(double time)
    {
        Array.Clear(passed);
        double remaining = time;
        while (remaining > 0)
        {
            double fastest = Flows(Gas);
            if (!(fastest > 0))
                break;
            double h = Math.Min(remaining, SubstepShare / fastest);
            Gas.CopyTo(half, 0);
            Move(half, 0.5 * h);
            Flows(half);
            Move(Gas, h);
            Count(h);
            remaining -= h;
        }
    }

    /// <summary>The flow of every link at a state of all volumes; returns the fastest rate at which a pressure settles or a mass turns over [1/s].</summary>
    private double Flows(Parcel[] state)
    {
        for (int i = 0; i < state.Length; i++)
        {
            zones[i] = state[i].Zone(p);
            pressures[i] = zones[i].PressureVolume / Volumes[i];
            rates[i] = 0;
        }

        for (int l = 0; l < links.Length; l++)
        {
            ref readonly HoleLink link = ref links[l];
            bool outside = link.To < 0;
            ref readonly Zone one = ref zones[link.From];
            Zone two = outside ? p.Outside : zones[link.To];
            double at = pressures[link.From], other = outside ? link.Behind : pressures[link.To], over = Math.Abs(at - other);
            flows[l] = over <= Settled * other ? 0 : GapMoment.Flow(p.Law, link.Size, 1, one, at, two, other);
            if (flows[l] == 0)
                continue;
            double m = Math.Abs(flows[l]), brought = Upstream(l).Enthalpy;
            rates[link.From] += m * Math.Max(one.GammaMinusOne * brought / (Volumes[link.From] * over), 1 / one.Mass);
            if (!outside)
                rates[link.To] += m * Math.Max(two.GammaMinusOne * brought / (Volumes[link.To] * over), 1 / two.Mass);
        }

        double fastest = 0;
        foreach (double rate in rates)
            fastest = Math.Max(fastest, rate);
        return fastest;
    }

    /// <summary>Lets the present flows run for a time.</summary>
    private void Move(Parcel[] state, double h)
    {
        for (int l = 0; l < links.Length; l++)
        {
            ref readonly HoleLink link = ref links[l];
            double m = h * flows[l];
            if (m == 0)
                continue;
            Zone upstream = Upstream(l);
            double products = m * upstream.ProductFraction, energy = m * upstream.Enthalpy;
            state[link.From].Add(-products, products - m, -energy);
            if (link.To >= 0)
                state[link.To].Add(products, m - products, energy + m * Kinetic(l));
        }
    }

    /// <summary>Enters what the present flows pass in a time.</summary>
    private void Count(double h)
    {
        for (int l = 0; l < links.Length; l++)
        {
            double m = h * flows[l];
            if (m == 0)
                continue;
            Zone upstream = Upstream(l);
            HolePassed x = passed[l];
            passed[l] = new HolePassed(
                x.Forward + Math.Max(m, 0),
                x.Mass + m,
                x.Energy + m * (upstream.Enthalpy + Kinetic(l)),
                x.Volume + m * upstream.R * upstream.Temperature / pressures[links[l].From]);
        }
    }

    private Zone Upstream(int l) => flows[l] > 0 ? zones[links[l].From] : links[l].To < 0 ? p.Outside : zones[links[l].To];

    /// <summary>Kinetic energy that a flow takes along [J/kg].</summary>
    private double Kinetic(int l) => flows[l] > 0 ? 0.5 * Speeds[links[l].From] * Speeds[links[l].From] : 0;
}
