using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// Turbulent exchange between the stream that leaves through the last vents and the dead end beyond them: the closure
/// of the lumped models, resolved in depth. The volume flow that reaches past a depth z is exchange x volume flow
/// of the stream x exp(-z/reach).
/// </summary>
/// <remarks>
/// Stream gas and pocket gas change places by equal volumes, with their enthalpy and momentum: nothing is made or lost.
/// What reaches past the nozzle plane goes into the recess behind it. Without this exchange the air there would stay,
/// compressed and cold. A stream that crossed an opening as a free jet brings outside air along, and as much gas of the
/// pocket goes outside.
/// </remarks>
internal sealed class DeadEndMixing
{
    /// <summary>
    /// Share of a cell that may change places in one step [-]: a guard, far above what the Courant number leaves.
    /// </summary>
    private const double MaxShare = 0.4;

    private readonly GapParameters p;
    private readonly TubeFlow tube;
    private readonly double firstVolume;
    private readonly int first;

    /// <summary>Share of the stream that each cell holds, and share of the exchange that reaches it [-].</summary>
    private readonly double[] stream;
    private readonly double[] pocket;
    private readonly double max;

    public DeadEndMixing(GapParameters p, TubeFlow tube, double length, int nozzleCell, double reach, ReadOnlySpan<VentCells> lastVents)
    {
        this.p = p;
        this.tube = tube;
        double cellLength = tube.CellLength, begin = length - p.DeadEndDepth;
        int cells = tube.Cells.Count;
        firstVolume = tube.FirstArea * cellLength;
        first = Math.Clamp((int)(begin / cellLength), 0, cells - 1);
        int mouth = first;
        foreach (VentCells vent in lastVents)
            first = Math.Min(first, vent.First);
        stream = new double[cells - first];
        pocket = new double[cells - first];
        double area = 0;
        foreach (VentCells vent in lastVents)
            area += vent.Area;
        foreach (VentCells vent in lastVents)
        {
            for (int k = 0; k < vent.Share.Length; k++)
                stream[vent.First - first + k] += vent.Share[k] * vent.Area / area;
        }

        double reached = 1;
        for (int i = mouth; i < nozzleCell; i++)
        {
            double beyond = Math.Exp(-Math.Max(0, (i + 1) * cellLength - begin) / reach);
            pocket[i - first] = reached - beyond;
            reached = beyond;
        }

        int recess = Math.Max(nozzleCell, mouth);
        for (int i = recess; i < cells; i++)
            pocket[i - first] += reached / (cells - recess);
        for (int k = 0; k < stream.Length; k++)
            max = Math.Max(max, (stream[k] + pocket[k]) / RelativeVolume(tube.Cells.First + first + k));
    }

    /// <summary>Share of its speed and excess temperature that the stream keeps across all openings [-].</summary>
    public double JetShare { get; private set; } = 1;

    /// <summary>
    /// Lets stream and pocket change places over a time; <paramref name="origin"/> is the index of the tube's original
    /// first cell.
    /// </summary>
    /// <returns>What left to the outside, net: nothing but where a free jet has brought outside air along.</returns>
    public GapTotals Stir(int origin, double streamVolumeFlow, double time)
    {
        TubeArrays a = tube.Cells;
        var fromStream = default(Content);
        var fromPocket = default(Content);
        double pressure = 0;
        for (int k = 0; k < stream.Length; k++)
        {
            int i = origin + first + k;
            Content c = Content.Of(a, i);
            fromStream += c.Times(stream[k]);
            fromPocket += c.Times(pocket[k]);
            pressure += a.Pressure[i] * stream[k];
        }

        double airDensity = pressure / (p.Air.R * p.OutsideTemperature), own = Own(fromStream.Mass, airDensity);
        double part = Math.Min(p.DeadEndExchange * JetShare * streamVolumeFlow * time / firstVolume, MaxShare / max);
        var air = new Content(airDensity, 0, 0, airDensity * p.Air.Cp * p.OutsideTemperature);
        Content arrives = own < 1 ? fromStream.Times(own) + air.Times(1 - own) : fromStream;
        for (int k = 0; k < stream.Length; k++)
        {
            Content c = Content.Of(a, origin + first + k);
            Content change = fromPocket.Times(own * stream[k]) + arrives.Times(pocket[k]) + c.Times(-own * stream[k] - pocket[k]);
            change.Times(part / RelativeVolume(origin + first + k)).Enter(a, origin + first + k);
        }

        double outside = (1 - own) * part * firstVolume;
        return new GapTotals(outside * (fromPocket.Mass - air.Mass), outside * (fromPocket.Enthalpy - air.Enthalpy));
    }

    /// <summary>Volume of a cell over that of the tube's first as it was before the joint slid [-].</summary>
    private double RelativeVolume(int i) => tube.VolumeOf(i) / tube.CellLength;

    /// <summary>
    /// Share of the stream's own gas in the volume that arrives [-]: the rest is air that a free jet has mixed in, as
    /// in the lumped models.
    /// </summary>
    private double Own(double density, double airDensity)
    {
        JetShare = p.FreeLength > 0 ? FreeJet.Share<Real>(p.FreeLength, p.JetCore, density / airDensity) : 1;
        return JetShare < 1 ? JetShare * airDensity / (JetShare * airDensity + (1 - JetShare) * density) : 1;
    }

    /// <summary>What a unit of volume carries: mass, momentum, products, total enthalpy.</summary>
    private readonly record struct Content(double Mass, double Momentum, double Products, double Enthalpy)
    {
        public static Content Of(TubeArrays a, int i) => new(a.Density[i], a.Momentum[i], a.Products[i], a.Energy[i] + a.Pressure[i]);

        public static Content operator +(in Content x, in Content y) =>
            new(x.Mass + y.Mass, x.Momentum + y.Momentum, x.Products + y.Products, x.Enthalpy + y.Enthalpy);

        public Content Times(double factor) => new(factor * Mass, factor * Momentum, factor * Products, factor * Enthalpy);

        public void Enter(TubeArrays a, int i)
        {
            a.Density[i] += Mass;
            a.Momentum[i] += Momentum;
            a.Products[i] += Products;
            a.Energy[i] += Enthalpy;
        }
    }
}
