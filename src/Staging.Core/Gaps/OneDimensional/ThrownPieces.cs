using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// The pieces of one broken web in the tube: a source that moves. They fly along the stations at one speed, stay at the
/// nozzle plane, and burn at the pressure where they are.
/// </summary>
/// <remarks>
/// <para>
/// What they give enters the cells over their own size about the place they have reached, cut off at both ends of the
/// tube: a fixed length, so that the answer does not depend on the grid. It comes at rest, with the enthalpy of the
/// flame.
/// </para>
/// <para>
/// A step is split where the source changes abruptly: at burn-through, where the fresh faces take fire, where openings
/// have lost their share, and at the nozzle plane. Each part is a midpoint rule in place and pressure. Stations are
/// those of the tube, as in the lumped models: when the joint slides they leave with the forward body, and so do the
/// pieces.
/// </para>
/// </remarks>
internal sealed class ThrownPieces
{
    private readonly GapParameters p;
    private readonly PieceParameters pieces;
    private readonly TubeFlow tube;
    private readonly int origin;
    private readonly double start;
    private readonly double arrival;
    private readonly double enthalpy;
    private double unburnt = 1;

    /// <param name="chamber">The chamber that has thrown them.</param>
    /// <param name="p">The gap.</param>
    /// <param name="tube">The tube.</param>
    /// <param name="origin">Index of the cell that begins at station 0.</param>
    public ThrownPieces(ChamberParameters chamber, GapParameters p, TubeFlow tube, int origin)
    {
        this.p = p;
        this.tube = tube;
        this.origin = origin;
        pieces = chamber.Pieces!;
        start = chamber.Start;
        arrival = pieces.Speed > 0 ? start + p.TubeLength / pieces.Speed : double.PositiveInfinity;
        enthalpy = p.Products.Cp * chamber.FlameTemperature;
    }

    /// <summary>When they have burnt [s]; infinite while they burn.</summary>
    public double BurntAt { get; private set; } = double.PositiveInfinity;

    /// <summary>When they came to the nozzle plane, still burning [s]; infinite while they have not.</summary>
    public double AtNozzleAt { get; private set; } = double.PositiveInfinity;

    /// <summary>Burns them from one time to another [s]; returns what they gave.</summary>
    public GapTotals Burn(double from, double to)
    {
        double given = 0, now = Math.Max(from, start);
        while (now < to && unburnt > 0)
        {
            if (now >= arrival)
                AtNozzleAt = arrival;
            double next = NextChange(now, to);
            given += BurnEvenly(now, next);
            now = next;
        }

        return new GapTotals(given, given * enthalpy);
    }

    /// <summary>When the source next changes abruptly after a time, at the latest at another [s].</summary>
    private double NextChange(double after, double to)
    {
        foreach (double change in (ReadOnlySpan<double>)[pieces.FreshAt, pieces.LostAt, arrival])
        {
            if (change > after)
                to = Math.Min(to, change);
        }

        return to;
    }

    /// <summary>
    /// Burns them between two times without an abrupt change [s]; returns the mass that has come into the tube [kg].
    /// </summary>
    private double BurnEvenly(double from, double to)
    {
        double time = to - from, station = Math.Min(pieces.Speed * (0.5 * (from + to) - start), p.TubeLength);
        var flame = new Flame(station, pieces.Size, p.TubeLength, tube, origin);
        double kept = pieces.KeptFrom(from) * pieces.Mass;
        double ahead = Math.Min(0.5 * time * Rate(PressureIn(flame, 0), from), unburnt);
        double rate = Rate(PressureIn(flame, kept * ahead), from), share = time * rate;
        if (share >= unburnt)
        {
            share = unburnt;
            BurntAt = from + unburnt / rate;
        }

        unburnt -= share;
        Release(flame, kept * share);
        return kept * share;
    }

    /// <summary>Rate at which the burnt share grows [1/s].</summary>
    private double Rate(double pressure, double from) => pieces.Burning<Real>(pressure, from) / pieces.Mass;

    /// <summary>Mean pressure over a flame once it has given a mass [kg] [Pa].</summary>
    private double PressureIn(in Flame flame, double given)
    {
        TubeArrays a = tube.Cells;
        double sum = 0;
        for (int i = flame.First; i <= flame.Last; i++)
        {
            double share = flame.ShareOf(i), more = given * share / VolumeOf(i);
            double density = a.Density[i] + more, products = a.Products[i] + more;
            double energy = a.Energy[i] + more * enthalpy - 0.5 * a.Momentum[i] * a.Momentum[i] / density;
            sum += share * new Parcel(products, density - products, energy).Zone(p).PressureVolume;
        }

        return sum;
    }

    private void Release(in Flame flame, double mass)
    {
        TubeArrays a = tube.Cells;
        for (int i = flame.First; i <= flame.Last; i++)
        {
            double more = mass * flame.ShareOf(i) / VolumeOf(i);
            a.Density[i] += more;
            a.Products[i] += more;
            a.Energy[i] += more * enthalpy;
        }
    }

    private double VolumeOf(int i) => tube.FirstArea * tube.VolumeOf(i);

    /// <summary>A stretch of the tube and the cells it lies over.</summary>
    private readonly struct Flame
    {
        private readonly double from;
        private readonly double to;
        private readonly double cellLength;
        private readonly int origin;

        /// <summary>A stretch of a size about a station, within the tube [m].</summary>
        public Flame(double station, double size, double length, TubeFlow tube, int origin)
        {
            from = Math.Max(0, station - 0.5 * size);
            to = Math.Min(length, station + 0.5 * size);
            cellLength = tube.CellLength;
            this.origin = origin;
            Last = Math.Min(origin + (int)(to / cellLength), tube.Cells.End - 1);
            First = Math.Min(origin + (int)(from / cellLength), Last);
        }

        public int First { get; }

        public int Last { get; }

        /// <summary>Share of its length over a cell [-].</summary>
        public double ShareOf(int i)
        {
            double left = (i - origin) * cellLength, right = left + cellLength;
            return Math.Max(0, Math.Min(to, right) - Math.Max(from, left)) / (to - from);
        }
    }
}
