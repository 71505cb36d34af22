using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// Jackets as stirred volumes, the cells of the tube whose holes lead into them, and what lies outside, as one network.
/// </summary>
/// <remarks>
/// Filling and emptying a small jacket one after the other would make the second wall vanish, so they are never split.
/// What leaves a cell keeps its speed along the tube up to the hole; in the jacket it comes to rest, and its kinetic
/// energy with it. What comes back has no speed along the tube.
/// </remarks>
internal sealed class JacketNetwork
{
    private readonly GapParameters p;
    private readonly TubeFlow tube;
    private readonly int origin;
    private readonly VentCells[] vents;
    private readonly HoleLink[] links;
    private readonly VesselNetwork network;

    /// <summary>
    /// Cells under holes, counted from the tube's original first one: the first volumes of the network. The jackets
    /// follow.
    /// </summary>
    private readonly int[] cells;

    public JacketNetwork(GapParameters p, TubeFlow tube, int origin, IEnumerable<VentCells> vents)
    {
        this.p = p;
        this.tube = tube;
        this.origin = origin;
        this.vents = [.. vents];
        cells = [.. new SortedSet<int>(this.vents.SelectMany(v => Enumerable.Range(v.First, v.Share.Length)))];
        int n = cells.Length;
        var found = new List<HoleLink>();
        foreach (VentCells vent in this.vents)
        {
            for (int k = 0; k < vent.Share.Length; k++)
                found.Add(new HoleLink(Array.IndexOf(cells, vent.First + k), n + vent.Jacket, vent.Over(k), 0));
        }

        for (int j = 0; j < p.Jackets.Length; j++)
            found.AddRange(
                p.Jackets[j].Openings.Select(o => new HoleLink(n + j, o.Jacket < 0 ? -1 : n + o.Jacket, o.Size, o.OutsidePressure)));
        links = [.. found];
        network = new VesselNetwork(p, n + p.Jackets.Length, links);
        for (int j = 0; j < p.Jackets.Length; j++)
        {
            double atRest = p.OutsidePressure * p.Jackets[j].Volume;
            network.Volumes[n + j] = p.Jackets[j].Volume;
            network.Gas[n + j] = new Parcel(0, atRest / (p.Air.R * p.OutsideTemperature), atRest / (p.Air.Gamma - 1));
        }
    }

    /// <summary>Mass and energy in the jackets.</summary>
    public GapTotals Totals
    {
        get
        {
            var sum = default(GapTotals);
            foreach (ref readonly Parcel jacket in network.Gas.AsSpan(cells.Length))
                sum += new GapTotals(jacket.Mass, jacket.Energy);
            return sum;
        }
    }

    /// <summary>Whether every jacket holds a gas.</summary>
    public bool HoldGas
    {
        get
        {
            foreach (ref readonly Parcel jacket in network.Gas.AsSpan(cells.Length))
            {
                if (!jacket.HoldsGas)
                    return false;
            }

            return true;
        }
    }

    /// <summary>Pressures in all of them [Pa].</summary>
    public double[] Pressures => [.. Enumerable.Range(0, p.Jackets.Length).Select(PressureOf)];

    /// <summary>Highest of them [Pa].</summary>
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

    /// <summary>Pressure in a jacket [Pa].</summary>
    public double PressureOf(int jacket) => network.PressureOf(cells.Length + jacket);

    /// <summary>Lets everything flow for a time [s]; returns what left to the outside and to the walls.</summary>
    /// <param name="time">The time [s].</param>
    /// <param name="stirred">Receives the volumes that left through the vents, net, each times its share of stirring
    /// [m3].</param>
    public GapTotals Pass(double time, out double stirred)
    {
        Gather();
        network.Pass(time);
        Scatter();
        stirred = 0;
        int l = 0;
        foreach (VentCells vent in vents)
        {
            double volume = 0;
            for (int k = 0; k < vent.Share.Length; k++)
                volume += network.Passed[l++].Volume;
            stirred += vent.Stirring * Math.Max(0, volume);
        }

        var left = new GapTotals(0, Cool(time));
        for (; l < links.Length; l++)
        {
            if (links[l].To < 0)
                left += new GapTotals(network.Passed[l].Mass, network.Passed[l].Energy);
        }

        return left;
    }

    private void Gather()
    {
        TubeArrays a = tube.Cells;
        for (int k = 0; k < cells.Length; k++)
        {
            int i = origin + cells[k];
            double v = tube.FirstArea * tube.VolumeOf(i), u = a.Momentum[i] / a.Density[i];
            network.Volumes[k] = v;
            network.Speeds[k] = u;
            network.Gas[k] = new Parcel(v * a.Products[i], v * (a.Density[i] - a.Products[i]), v * (a.Energy[i] - 0.5 * a.Momentum[i] * u));
        }
    }

    private void Scatter()
    {
        TubeArrays a = tube.Cells;
        for (int k = 0; k < cells.Length; k++)
        {
            int i = origin + cells[k];
            a.Density[i] = network.Gas[k].Mass / network.Volumes[k];
            a.Products[i] = network.Gas[k].Products / network.Volumes[k];
        }

        for (int l = 0; l < links.Length && links[l].From < cells.Length; l++)
        {
            int k = links[l].From, i = origin + cells[k];
            a.Momentum[i] -= network.Passed[l].Forward * network.Speeds[k] / network.Volumes[k];
            a.Energy[i] -= network.Passed[l].Energy / network.Volumes[k];
        }
    }

    /// <summary>Heat that the walls of the jackets take up in a time [J].</summary>
    private double Cool(double time)
    {
        double lost = 0;
        for (int j = 0; j < p.Jackets.Length; j++)
        {
            ref Parcel jacket = ref network.Gas[cells.Length + j];
            Zone<Real> zone = jacket.Zone(p);
            double capacity = zone.Mass * zone.Cv;
            double share = p.Walls.ShareLost(time, p.Jackets[j].Wall, capacity, zone.Temperature, zone.ProductFraction);
            double loss = capacity * (zone.Temperature - p.OutsideTemperature) * share;
            jacket.Energy -= loss;
            lost += loss;
        }

        return lost;
    }
}
