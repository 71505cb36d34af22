using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// Stirred volumes joined by holes to each other and to the outside: all flows together, by the midpoint rule in
/// substeps no longer than the busiest volume allows. The laws are those of the lumped models.
/// </summary>
/// <remarks>
/// Where that would take too many substeps, because a volume settles or is flushed far faster than the tube steps, the
/// rest of the time is one step of the backward Euler rule, extrapolated from that step and its halves to second order:
/// E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, 2nd ed. (1996), section IV.9. If the
/// extrapolation would leave a volume without gas, the two halves stand.
/// </remarks>
internal sealed class VesselNetwork
{
    /// <summary>Substeps after which the rest is one implicit step: about what that costs.</summary>
    private const int UsualSubsteps = 32;

    /// <summary>
    /// Share of the way to one pressure, and of the mass, that one substep may go in the busiest volume [-]; the
    /// midpoint rule errs by its cube.
    /// </summary>
    private const double SubstepShare = 0.25;

    /// <summary>Pressure difference over pressure below which nothing passes [-]: round-off of the law.</summary>
    private const double Settled = 1e-12;

    private readonly GapParameters p;
    private readonly HoleLink[] links;
    private readonly int maxSubsteps;
    private readonly VesselRelaxation relaxation;
    private readonly Parcel[] half;
    private readonly Parcel[] whole;
    private readonly Zone<Real>[] zones;
    private readonly double[] pressures;
    private readonly double[] rates;
    private readonly double[] flows;
    private readonly HoleFlow[] passed;
    private readonly HoleFlow[] halfPassed;
    private readonly HoleFlow[] wholePassed;

    /// <param name="p">The gap, for its gases and its law.</param>
    /// <param name="count">Number of volumes.</param>
    /// <param name="links">The holes.</param>
    /// <param name="maxSubsteps">Substeps after which the rest is one implicit step.</param>
    public VesselNetwork(GapParameters p, int count, HoleLink[] links, int maxSubsteps = UsualSubsteps)
    {
        this.p = p;
        this.links = links;
        this.maxSubsteps = maxSubsteps;
        Gas = new Parcel[count];
        Volumes = new double[count];
        Speeds = new double[count];
        relaxation = new VesselRelaxation(p, Volumes, Speeds, links);
        half = new Parcel[count];
        whole = new Parcel[count];
        zones = new Zone<Real>[count];
        pressures = new double[count];
        rates = new double[count];
        flows = new double[links.Length];
        passed = new HoleFlow[links.Length];
        halfPassed = new HoleFlow[links.Length];
        wholePassed = new HoleFlow[links.Length];
    }

    /// <summary>What each volume holds.</summary>
    public Parcel[] Gas { get; }

    /// <summary>Size of each volume [m3].</summary>
    public double[] Volumes { get; }

    /// <summary>
    /// Speed with which gas leaves each volume, besides what the holes give it [m/s]: it comes to rest in the next one.
    /// </summary>
    public double[] Speeds { get; }

    /// <summary>What passed each link in the last step.</summary>
    public ReadOnlySpan<HoleFlow> Passed => passed;

    public double PressureOf(int volume) => Gas[volume].Zone(p).PressureVolume / Volumes[volume];

    /// <summary>Lets everything flow for a time [s].</summary>
    public void Pass(double time)
    {
        Array.Clear(passed);
        double remaining = time;
        for (int taken = 0; remaining > 0; taken++)
        {
            double fastest = Flows(Gas), allowed = SubstepShare * (maxSubsteps - taken);
            if (fastest == 0)
                return;
            double h = Halfway(remaining, fastest, allowed);
            if (h == 0)
            {
                Relax(remaining);
                return;
            }

            Move(Gas, h);
            Count(h);
            remaining -= h;
        }
    }

    /// <summary>
    /// Chooses a substep and goes half of it, where the flows are those of the whole; returns 0 when the rest takes
    /// more substeps than are allowed. A hole at rest shows only halfway how fast it is.
    /// </summary>
    private double Halfway(double remaining, double fastest, double allowed)
    {
        while (!(remaining * fastest > allowed))
        {
            double h = Math.Min(remaining, SubstepShare / fastest);
            Gas.CopyTo(half, 0);
            Move(half, 0.5 * h);
            double middle = Flows(half);
            if (!(h * middle > 2 * SubstepShare))
                return h;
            fastest = Math.Max(middle, 2 * fastest);
            Flows(Gas);
        }

        return 0;
    }

    /// <summary>
    /// Lets everything flow for a time by implicit steps: twice what two halves bring, less what the whole brings.
    /// </summary>
    private void Relax(double time)
    {
        relaxation.Step(Gas, time);
        relaxation.End.CopyTo(whole, 0);
        relaxation.Passed.CopyTo(wholePassed, 0);
        relaxation.Step(Gas, 0.5 * time);
        relaxation.End.CopyTo(half, 0);
        relaxation.Passed.CopyTo(halfPassed, 0);
        relaxation.Step(half, 0.5 * time);
        double share = 1;
        for (int i = 0; i < Gas.Length; i++)
        {
            Parcel beyond = Beyond(relaxation.End[i], whole[i]);
            if (!(beyond.HoldsGas && beyond.IsMixture))
                share = 0;
        }

        for (int i = 0; i < Gas.Length; i++)
            Gas[i] = share > 0 ? Beyond(relaxation.End[i], whole[i]) : relaxation.End[i];
        for (int l = 0; l < links.Length; l++)
            passed[l] += halfPassed[l] + relaxation.Passed[l] + share * (halfPassed[l] + relaxation.Passed[l] - wholePassed[l]);
    }

    /// <summary>A point as far beyond one state as that is from another.</summary>
    private static Parcel Beyond(in Parcel to, in Parcel from) =>
        new(2 * to.Products - from.Products, 2 * to.Air - from.Air, 2 * to.Energy - from.Energy);

    /// <summary>
    /// The flow of every link at a state of all volumes; returns the fastest rate at which a pressure settles or a mass
    /// turns over [1/s].
    /// </summary>
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
            ref readonly Zone<Real> one = ref zones[link.From];
            Zone<Real> two = outside ? p.Outside : zones[link.To];
            double at = pressures[link.From], other = outside ? link.Behind : pressures[link.To], over = Math.Abs(at - other);
            flows[l] = over <= Settled * other ? 0 : GapState<Real>.Flow(p.Law, link.Size, 1, one, at, two, other);
            if (flows[l] == 0)
                continue;
            double m = Math.Abs(flows[l]), brought = Upstream(l).Enthalpy;
            rates[link.From] += m * Math.Max(one.GammaMinusOne * brought / (Volumes[link.From] * over), 1.0 / one.Mass);
            if (!outside)
                rates[link.To] += m * Math.Max(two.GammaMinusOne * brought / (Volumes[link.To] * over), 1.0 / two.Mass);
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
            Zone<Real> upstream = Upstream(l);
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
            Zone<Real> upstream = Upstream(l);
            passed[l] += new HoleFlow(
                Math.Max(m, 0), m, m * (upstream.Enthalpy + Kinetic(l)), m * upstream.R * upstream.Temperature / pressures[links[l].From]);
        }
    }

    private Zone<Real> Upstream(int l) => flows[l] > 0 ? zones[links[l].From] : links[l].To < 0 ? p.Outside : zones[links[l].To];

    /// <summary>Kinetic energy that a flow takes along [J/kg].</summary>
    private double Kinetic(int l) => flows[l] > 0 ? 0.5 * Speeds[links[l].From] * Speeds[links[l].From] : 0;
}
