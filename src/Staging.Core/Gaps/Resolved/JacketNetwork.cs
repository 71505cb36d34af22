using Staging.Core.Discharge;

namespace Staging.Core.Gaps.Resolved;

/// <summary>
/// Jackets as stirred volumes, the cells of the tube whose holes lead into them, and what lies outside: all flows of a source step together, by
/// the midpoint rule in substeps no longer than the fastest of them allows.
/// </summary>
/// <remarks>
/// Filling and emptying a small jacket one after the other would make the second wall vanish, so they are never split. What leaves a cell keeps its speed
/// along the tube up to the hole; in the jacket it comes to rest, and its kinetic energy with it. What comes back has no speed along the tube.
/// </remarks>
internal sealed class JacketNetwork
{
    /// <summary>Share of the way to one pressure, and of the mass, that one substep may go in the busiest volume [-]; the midpoint rule errs by its cube.</summary>
    private const double SubstepShare = 0.25;

    /// <summary>Pressure difference over pressure below which nothing passes [-]: round-off of the law.</summary>
    private const double Settled = 1e-12;

    private readonly GapParameters p;
    private readonly TubeFlow tube;
    private readonly int origin;
    private readonly ResolvedVent[] vents;
    private readonly Link[] links;

    /// <summary>Cells under holes first, counted from the tube's original first one, then the jackets.</summary>
    private readonly int[] cells;
    private readonly Parcel[] gas;
    private readonly Parcel[] half;
    private readonly Zone[] zones;
    private readonly double[] volumes;
    private readonly double[] pressures;
    private readonly double[] speeds;
    private readonly double[] flows;
    private readonly double[] rates;

    /// <summary>What left each cell in a step: mass that went out, and energy, net.</summary>
    private readonly double[] carried;
    private readonly double[] given;

    public JacketNetwork(GapParameters p, TubeFlow tube, int origin, IEnumerable<ResolvedVent> vents)
    {
        this.p = p;
        this.tube = tube;
        this.origin = origin;
        this.vents = [.. vents];
        var under = new SortedSet<int>(this.vents.SelectMany(v => Enumerable.Range(v.First, v.Share.Length)));
        cells = [.. under];
        int n = cells.Length, all = n + p.Jackets.Length;
        gas = new Parcel[all];
        half = new Parcel[all];
        zones = new Zone[all];
        volumes = new double[all];
        pressures = new double[all];
        speeds = new double[all];
        rates = new double[all];
        carried = new double[n];
        given = new double[n];
        var found = new List<Link>();
        for (int v = 0; v < this.vents.Length; v++)
        {
            ResolvedVent vent = this.vents[v];
            for (int k = 0; k < vent.Share.Length; k++)
                found.Add(new Link(Array.IndexOf(cells, vent.First + k), n + vent.Jacket, vent.Over(k), 0, v));
        }

        for (int j = 0; j < p.Jackets.Length; j++)
        {
            JacketParameters jacket = p.Jackets[j];
            volumes[n + j] = jacket.Volume;
            gas[n + j] = new Parcel(0, p.OutsidePressure * jacket.Volume / (p.Air.R * p.OutsideTemperature), p.OutsidePressure * jacket.Volume / (p.Air.Gamma - 1));
            foreach (OutletParameters opening in jacket.Openings)
                found.Add(new Link(n + j, opening.Jacket < 0 ? -1 : n + opening.Jacket, opening.Size, opening.OutsidePressure, -1));
        }

        links = [.. found];
        flows = new double[links.Length];
    }

    /// <summary>Mass and energy in the jackets.</summary>
    public GapTotals Totals
    {
        get
        {
            var sum = default(GapTotals);
            foreach (ref readonly Parcel jacket in gas.AsSpan(cells.Length))
                sum += new GapTotals(jacket.Mass, jacket.Energy);
            return sum;
        }
    }

    /// <summary>Pressure in a jacket [Pa].</summary>
    public double PressureOf(int jacket) => gas[cells.Length + jacket].Zone(p).PressureVolume / volumes[cells.Length + jacket];

    /// <summary>Pressures in all of them [Pa].</summary>
    public double[] Pressures => [.. Enumerable.Range(0, p.Jackets.Length).Select(PressureOf)];

    /// <summary>Highest of them [Pa]; 0 where there is none.</summary>
    public double HighestPressure
    {
        get
        {
            double most = 0;
            for (int j = 0; j < p.Jackets.Length; j++)
                most = Math.Max(most, PressureOf(j));
            return most;
        }
    }

    /// <summary>Lets everything flow for a time [s]; returns what left to the outside and to the walls.</summary>
    /// <param name="time">The time [s].</param>
    /// <param name="stirred">Receives the volumes that left through the vents, net, each times its share of stirring [m3].</param>
    public GapTotals Pass(double time, out double stirred)
    {
        Gather();
        var left = default(GapTotals);
        double remaining = time;
        Span<double> passed = stackalloc double[vents.Length];
        while (remaining > 0)
        {
            double fastest = Flows(gas);
            if (!(fastest > 0))
                break;
            double h = Math.Min(remaining, SubstepShare / fastest);
            gas.CopyTo(half, 0);
            Move(half, 0.5 * h);
            Flows(half);
            left += Move(gas, h);
            Count(h, passed);
            remaining -= h;
        }

        Scatter();
        stirred = 0;
        for (int v = 0; v < vents.Length; v++)
            stirred += vents[v].Stirring * Math.Max(0, passed[v]);
        return left + new GapTotals(0, Cool(time));
    }

    private void Gather()
    {
        TubeArrays a = tube.Cells;
        for (int k = 0; k < cells.Length; k++)
        {
            int i = origin + cells[k];
            double v = p.Profile.FirstArea * tube.VolumeOf(i), u = a.Momentum[i] / a.Density[i];
            volumes[k] = v;
            speeds[k] = u;
            gas[k] = new Parcel(v * a.Products[i], v * (a.Density[i] - a.Products[i]), v * (a.Energy[i] - 0.5 * a.Momentum[i] * u));
            carried[k] = given[k] = 0;
        }
    }

    private void Scatter()
    {
        TubeArrays a = tube.Cells;
        for (int k = 0; k < cells.Length; k++)
        {
            int i = origin + cells[k];
            a.Density[i] = gas[k].Mass / volumes[k];
            a.Products[i] = gas[k].Products / volumes[k];
            a.Momentum[i] -= carried[k] * speeds[k] / volumes[k];
            a.Energy[i] -= given[k] / volumes[k];
        }
    }

    /// <summary>The flow of every link at a state of all volumes; returns the fastest rate at which a pressure settles or a mass turns over [1/s].</summary>
    private double Flows(Parcel[] state)
    {
        for (int i = 0; i < state.Length; i++)
        {
            zones[i] = state[i].Zone(p);
            pressures[i] = zones[i].PressureVolume / volumes[i];
            rates[i] = 0;
        }

        for (int l = 0; l < links.Length; l++)
        {
            ref readonly Link link = ref links[l];
            bool outside = link.To < 0;
            ref readonly Zone one = ref zones[link.From];
            Zone two = outside ? p.Outside : zones[link.To];
            double at = pressures[link.From], other = outside ? link.Behind : pressures[link.To], over = Math.Abs(at - other);
            flows[l] = over <= Settled * other ? 0 : GapMoment.Flow(p.Law, link.Size, 1, one, at, two, other);
            if (flows[l] == 0)
                continue;
            double m = Math.Abs(flows[l]);
            double brought = Upstream(l).Enthalpy;
            rates[link.From] += m * Math.Max(one.GammaMinusOne * brought / (volumes[link.From] * over), 1 / one.Mass);
            if (!outside)
                rates[link.To] += m * Math.Max(two.GammaMinusOne * brought / (volumes[link.To] * over), 1 / two.Mass);
        }

        double fastest = 0;
        foreach (double rate in rates)
            fastest = Math.Max(fastest, rate);
        return fastest;
    }

    /// <summary>Lets the present flows run for a time; returns what left to the outside.</summary>
    private GapTotals Move(Parcel[] state, double h)
    {
        var left = default(GapTotals);
        for (int l = 0; l < links.Length; l++)
        {
            ref readonly Link link = ref links[l];
            double m = h * flows[l];
            if (m == 0)
                continue;
            Zone upstream = Upstream(l);
            double products = m * upstream.ProductFraction, energy = m * upstream.Enthalpy;
            state[link.From].Add(-products, products - m, -energy);
            if (link.To >= 0)
                state[link.To].Add(products, m - products, energy + m * Kinetic(l));
            else
                left += new GapTotals(m, energy);
        }

        return left;
    }

    /// <summary>Enters what the present flows take from the cells, and the volumes that pass the vents, for a time.</summary>
    private void Count(double h, Span<double> passed)
    {
        for (int l = 0; l < links.Length; l++)
        {
            ref readonly Link link = ref links[l];
            double m = h * flows[l];
            if (link.Vent < 0 || m == 0)
                continue;
            Zone upstream = Upstream(l);
            carried[link.From] += Math.Max(m, 0);
            given[link.From] += m * (upstream.Enthalpy + Kinetic(l));
            passed[link.Vent] += m * upstream.R * upstream.Temperature / pressures[link.From];
        }
    }

    private Zone Upstream(int l) => flows[l] > 0 ? zones[links[l].From] : links[l].To < 0 ? p.Outside : zones[links[l].To];

    /// <summary>Kinetic energy along the tube that a flow takes out of a cell [J/kg].</summary>
    private double Kinetic(int l)
    {
        Link link = links[l];
        return flows[l] > 0 && link.Vent >= 0 ? 0.5 * speeds[link.From] * speeds[link.From] : 0;
    }

    /// <summary>Heat that the walls of the jackets take up in a time [J]; 1/(1 + x + x^2/2) for exp(-x), as at the wall of the tube.</summary>
    private double Cool(double time)
    {
        double lost = 0;
        for (int j = 0; j < p.Jackets.Length; j++)
        {
            ref Parcel jacket = ref gas[cells.Length + j];
            Zone zone = jacket.Zone(p);
            double capacity = zone.Mass * zone.Cv, x = time * p.WallHeatTransfer * p.Jackets[j].Wall / capacity;
            double loss = capacity * (zone.Temperature - p.OutsideTemperature) * (1 - 1 / (1 + x + 0.5 * x * x));
            jacket.Energy -= loss;
            lost += loss;
        }

        return lost;
    }

    /// <summary>Holes between two volumes, or from one to the outside.</summary>
    /// <param name="From">Index of one volume.</param>
    /// <param name="To">Index of the other; -1 for the outside.</param>
    /// <param name="Size">The holes.</param>
    /// <param name="Behind">Pressure outside [Pa].</param>
    /// <param name="Vent">Index of the vent; -1 for an opening of a jacket.</param>
    private readonly record struct Link(int From, int To, OrificeSize Size, double Behind, int Vent);
}
