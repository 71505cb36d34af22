namespace Staging.Core.Gaps.OneDimensional;

/// <summary>Two perfect gases mixed by mass: what the kernels need of them, for any number of lanes.</summary>
internal interface ILaneGas<L>
    where L : struct, ILane<L>
{
    /// <summary>gamma - 1 = R/cv [-] of the mixture with mass fraction <paramref name="y"/> of products.</summary>
    L GammaMinusOne(L y);

    /// <summary>gamma - 1 and its inverse cv/R [-].</summary>
    L GammaMinusOne(L y, out L inverse);
}
