namespace Staging.Core.Gaps.OneDimensional;

/// <summary>Density, velocity, pressure and mass fraction of products of one cell or face a lane.</summary>
internal readonly struct Primitive<L>(L r, L u, L p, L Y)
    where L : struct, ILane<L>
{
    public readonly L r = r;
    public readonly L u = u;
    public readonly L p = p;
    public readonly L Y = Y;
}
