using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// One step of the backward Euler rule for stirred volumes joined by holes, however fast they settle or are flushed:
/// mass and energy are kept to round-off, and no volume loses its gas.
/// </summary>
/// <remarks>
/// Over the step every hole conducts in proportion to the pressure difference at its end, by the chord of its law; the
/// chords are found by iteration, each of which solves a linear system for the energies. A chord, unlike a tangent,
/// never carries two volumes past one pressure where the law is a root, and for holes in series each iteration halves
/// what is left of the error. Gas flows downhill, so the volumes are then flushed in order of their pressures: each
/// takes in what those above it gave, mixes, and gives of the mixture.
/// </remarks>
internal sealed class VesselRelaxation(GapParameters p, double[] volumes, double[] speeds, HoleLink[] links)
{
    private const int MaxIterations = 60;

    /// <summary>Change of all flows, over their sum, at which an iteration is the last [-].</summary>
    private const double Converged = 1e-8;

    /// <summary>
    /// Least pressure difference over pressure for which a chord is taken [-]: far below where the laws blend into a
    /// straight line.
    /// </summary>
    private const double ShortestChord = 1e-9;

    private readonly int n = volumes.Length;
    private readonly Parcel[] mixed = new Parcel[volumes.Length];
    private readonly Zone<Real>[] zones = new Zone<Real>[volumes.Length];
    private readonly double[] pressures = new double[volumes.Length];
    private readonly double[] gains = new double[volumes.Length];
    private readonly double[] matrix = new double[volumes.Length * volumes.Length];
    private readonly double[] alike = [.. volumes.Select(_ => 1.0)];
    private readonly int[] pivots = new int[volumes.Length];
    private readonly int[] downhill = [.. Enumerable.Range(0, volumes.Length)];
    private readonly int[][] linksOf = LinksOf(volumes.Length, links);
    private readonly double[] chords = new double[links.Length];
    private double changed;
    private double passing;

    /// <summary>What each volume holds at the end of the step.</summary>
    public Parcel[] End { get; } = new Parcel[volumes.Length];

    /// <summary>What has passed each link.</summary>
    public HoleFlow[] Passed { get; } = new HoleFlow[links.Length];

    /// <summary>Lets everything flow from a state for a time [s].</summary>
    public void Step(Parcel[] start, double time)
    {
        start.CopyTo(End, 0);
        Array.Clear(Passed);
        for (int i = 0; i < MaxIterations; i++)
        {
            Linearise(start, time);
            if (!LuFactors.Factorise(matrix, alike, pivots))
            {
                // Numbers that are none have no solution: no volume then holds a gas, and the run says so.
                Array.Fill(End, new Parcel(double.NaN, double.NaN, double.NaN));
                return;
            }

            LuFactors.Solve(matrix, pivots, gains);
            for (int k = 0; k < n; k++)
                pressures[k] = zones[k].GammaMinusOne * (start[k].Energy + gains[k]) / volumes[k];
            if (Flush(start) <= Converged)
                break;
        }
    }

    /// <summary>
    /// The balance of each volume's energy gain x: x(i) = sum over its holes of c (p(j) - p(i)) h, with the chord c
    /// times the step, the enthalpy h of the upstream gas, and p = (gamma - 1)(E + x)/V; written with x as the unknown,
    /// so that small flows into large volumes keep their digits.
    /// </summary>
    private void Linearise(Parcel[] start, double time)
    {
        Array.Clear(matrix);
        for (int i = 0; i < n; i++)
        {
            zones[i] = End[i].Zone(p);
            pressures[i] = zones[i].PressureVolume / volumes[i];
            matrix[i * n + i] = 1;
            gains[i] = 0;
        }

        for (int l = 0; l < links.Length; l++)
        {
            ref readonly HoleLink link = ref links[l];
            int i = link.From, j = link.To;
            double at = pressures[i], other = j < 0 ? link.Behind : pressures[j];
            ref readonly Zone<Real> one = ref zones[i];
            Zone<Real> two = j < 0 ? p.Outside : zones[j];
            double min = ShortestChord * other, seen = Math.Abs(at - other) < min ? other + min : at;
            chords[l] = time * GapState<Real>.Flow(p.Law, link.Size, 1, one, seen, two, other) / (seen - other);

            double brought = chords[l] * (at > other ? one.Enthalpy + Kinetic(i) : two.Enthalpy),
                taken = chords[l] * (at > other ? one.Enthalpy : two.Enthalpy);
            double a = one.GammaMinusOne / volumes[i], b = j < 0 ? 0 : two.GammaMinusOne / volumes[j];
            double difference = a * start[i].Energy - (j < 0 ? other : b * start[j].Energy);
            gains[i] -= taken * difference;
            matrix[i * n + i] += taken * a;
            if (j < 0)
                continue;
            matrix[i * n + j] -= taken * b;
            gains[j] += brought * difference;
            matrix[j * n + j] += brought * b;
            matrix[j * n + i] -= brought * a;
        }
    }

    /// <summary>
    /// Moves the gas down the pressures just found; returns how much the flows differ from those of the iteration
    /// before, over their sum [-].
    /// </summary>
    private double Flush(Parcel[] start)
    {
        Sort();
        start.CopyTo(mixed, 0);
        (changed, passing) = (0, 0);
        foreach (int i in downhill)
        {
            double conducted = 0;
            foreach (int l in linksOf[i])
            {
                double flow = chords[l] * (pressures[i] - PressureBeyond(l, i));
                conducted += Math.Max(0, flow);
                if (flow < 0 && links[l].To < 0)
                    Enter(l, i, -flow);
            }

            Give(i, start[i].Energy + gains[i], conducted);
        }

        return passing > 0 ? changed / passing : 0;
    }

    /// <summary>
    /// A volume that is to end with an energy E gives what it has beyond that, as gas of its mixture: with all its mass
    /// M and energy U before it gives, the mixture has the enthalpy h = (U + (gamma - 1) E)/M, and (U - E)/h is given.
    /// </summary>
    private void Give(int i, double energy, double conducted)
    {
        Parcel all = mixed[i];
        Zone<Real> mixture = all.Zone(p);
        double spare = all.Energy - energy;
        if (!(spare > 0 && conducted > 0))
        {
            End[i] = all;
            foreach (int l in linksOf[i])
            {
                if (PressureBeyond(l, i) <= pressures[i])
                    Record(l, default);
            }

            return;
        }

        double enthalpy = (all.Energy + mixture.GammaMinusOne * energy) / all.Mass, kept = 1 - spare / enthalpy / all.Mass;
        End[i] = new Parcel(kept * all.Products, kept * all.Air, energy);
        double volume = enthalpy * mixture.GammaMinusOne / mixture.Gamma;
        foreach (int l in linksOf[i])
        {
            double share = chords[l] * (pressures[i] - PressureBeyond(l, i)) / conducted;
            if (share < 0)
                continue;
            double e = share * spare, m = e / enthalpy, products = m * mixture.ProductFraction;
            bool forward = links[l].From == i;
            double kinetic = forward ? m * Kinetic(i) : 0;
            int to = forward ? links[l].To : links[l].From;
            if (to >= 0)
                mixed[to].Add(products, m - products, e + kinetic);
            double sign = forward ? 1 : -1;
            Record(l, new HoleFlow(forward ? m : 0, sign * m, sign * e + kinetic, sign * m * volume / pressures[links[l].From]));
        }
    }

    /// <summary>Lets outside air into a volume.</summary>
    private void Enter(int l, int i, double m)
    {
        double e = m * p.Outside.Enthalpy;
        mixed[i].Add(0, m, e);
        Record(l, new HoleFlow(0, -m, -e, -m * p.Outside.R * p.Outside.Temperature / pressures[i]));
    }

    private void Record(int l, in HoleFlow now)
    {
        changed += Math.Abs(now.Mass - Passed[l].Mass);
        passing += Math.Abs(now.Mass);
        Passed[l] = now;
    }

    private double PressureBeyond(int l, int i) =>
        links[l].From != i ? pressures[links[l].From] : links[l].To < 0 ? links[l].Behind : pressures[links[l].To];

    /// <summary>Kinetic energy that a flow takes along from a volume [J/kg].</summary>
    private double Kinetic(int i) => 0.5 * speeds[i] * speeds[i];

    private static int[][] LinksOf(int count, HoleLink[] links) =>
        [.. Enumerable.Range(0, count)
            .Select(i => Enumerable.Range(0, links.Length).Where(l => links[l].From == i || links[l].To == i).ToArray())];

    /// <summary>Insertion sort: the order hardly changes from one iteration to the next.</summary>
    private void Sort()
    {
        for (int k = 1; k < n; k++)
        {
            int moved = downhill[k], at = k;
            for (; at > 0 && pressures[downhill[at - 1]] < pressures[moved]; at--)
                downhill[at] = downhill[at - 1];
            downhill[at] = moved;
        }
    }
}
