using Staging.Core.Gases;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>Sweeps a tube tile by tile, so that face values and fluxes never leave the nearest cache.</summary>
internal sealed class TubeSweep<L, G, G1>(G gas, G1 oneGas, GasConstants products, GasConstants air) : ITubeSweep
    where L : struct, ILane<L>
    where G : struct, ILaneGas<L>
    where G1 : struct, ILaneGas<Lane1>
{
    public TubeExtremes Primitives(TubeArrays a) => TubeKernel<L, G>.Primitives(a, gas);

    public Primitive<Lane1> Face(TubeArrays a, int cell, bool right, double h)
    {
        FacePair<Lane1> pair = TubeKernel<Lane1, G1>.FacesOf(a, cell, h, oneGas);
        return right ? pair.Right : pair.Left;
    }

    public double Walls(TubeArrays a, TubeBore? shape, double time, double bore, in WallExchange walls) =>
        WallLosses<L>.Apply(a, time, bore, walls, products, air, shape);

    public double GammaMinusOne(double fraction) => oneGas.GammaMinusOne(new Lane1(fraction)).Value;

    public void Advance(TubeArrays a, TubeBore? bore, double k, bool uniform, in EndFlux left, in EndFlux right)
    {
        for (int from = a.First; from < a.End; from += TubeArrays.Tile)
        {
            int to = Math.Min(from + TubeArrays.Tile, a.End);
            if (uniform)
                TubeKernel<L, G>.UniformFaces(a, from - 1, to + 1);
            else
                TubeKernel<L, G>.Faces(a, from - 1, to + 1, 0.5 * k, gas);
            TubeKernel<L, G>.Fluxes(a, to - from + 1, gas);
            if (from == a.First)
                Put(a, 0, left, +1);
            if (to == a.End)
                Put(a, to - from, right, -1);
            if (bore is null)
                TubeKernel<L, G>.Update(a, from, to, k);
            else
                TubeKernel<L, G>.UpdateStepped(a, bore, from, to, k);
        }
    }

    /// <summary>
    /// Replaces a flux by that through an end, whose inward direction is +1 at the left and -1 at the right.
    /// </summary>
    private static void Put(TubeArrays a, int face, in EndFlux end, int inward) =>
        new TubeFlux<Lane1>(new(inward * end.Mass), new(end.Momentum), new(inward * end.Energy), new(inward * end.Products))
            .Store(ref a.Scratch[0], face);
}
