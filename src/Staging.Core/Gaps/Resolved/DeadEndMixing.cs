namespace Staging.Core.Gaps.Resolved;

/// <summary>
/// Turbulent exchange between the stream that leaves through the last vents and the dead end beyond them: the closure of the displacement
/// model, resolved in depth. The volume flow that reaches past a depth z is exchange x volume flow of the stream x exp(-z/reach).
/// </summary>
/// <remarks>
/// Stream gas and pocket gas change places by equal volumes, with their enthalpy and momentum: nothing is made or lost. What reaches past the
/// nozzle plane goes into the recess behind it. Without this exchange the air there would stay, compressed and cold.
/// </remarks>
internal sealed class DeadEndMixing
{
    /// <summary>Share of a cell that may change places in one step [-]: a guard, far above what the Courant number leaves.</summary>
    private const double MostShare = 0.4;

    private readonly GapParameters p;
    private readonly double firstVolume;
    private readonly int first;

    /// <summary>Share of the stream that each cell holds, and share of the exchange that reaches it [-].</summary>
    private readonly double[] stream;
    private readonly double[] pocket;

    /// <summary>Volume of each cell over that of the tube's first [-].</summary>
    private readonly double[] volume;
    private readonly double greatest;

    public DeadEndMixing(GapParameters p, TubeFlow tube, double length, int nozzleCell, double reach, ReadOnlySpan<ResolvedVent> lastVents)
    {
        this.p = p;
        double cellLength = tube.CellLength, begin = length - p.DeadEndDepth;
        int cells = tube.Cells.Count;
        firstVolume = p.Profile.FirstArea * cellLength;
        first = Math.Clamp((int)(begin / cellLength), 0, cells - 1);
        int mouth = first;
        foreach (ResolvedVent vent in lastVents)
            first = Math.Min(first, vent.First);
        stream = new double[cells - first];
        pocket = new double[cells - first];
        volume = new double[cells - first];
        for (int k = 0; k < volume.Length; k++)
            volume[k] = tube.RelativeArea(tube.Cells.First + first + k);
        foreach (ResolvedVent vent in lastVents)
        {
            for (int k = 0; k < vent.Share.Length; k++)
                stream[vent.First - first + k] += vent.Share[k] / lastVents.Length;
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
            greatest = Math.Max(greatest, (stream[k] + pocket[k]) / volume[k]);
    }

    /// <summary>Lets stream and pocket change places over a time; <paramref name="origin"/> is the index of the tube's original first cell.</summary>
    public void Stir(TubeArrays a, int origin, double streamVolumeFlow, double time)
    {
        double part = Math.Min(p.DeadEndExchange * streamVolumeFlow * time / firstVolume, MostShare / greatest);
        var fromStream = default(Content);
        var fromPocket = default(Content);
        for (int k = 0; k < stream.Length; k++)
        {
            Content c = Content.Of(a, origin + first + k);
            fromStream += c.Times(stream[k]);
            fromPocket += c.Times(pocket[k]);
        }

        for (int k = 0; k < stream.Length; k++)
        {
            Content c = Content.Of(a, origin + first + k);
            Content change = fromPocket.Times(stream[k]) + fromStream.Times(pocket[k]) + c.Times(-stream[k] - pocket[k]);
            change.Times(part / volume[k]).Enter(a, origin + first + k);
        }
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
