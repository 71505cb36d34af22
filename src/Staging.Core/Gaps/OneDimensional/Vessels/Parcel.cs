using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// A vessel of fixed volume, or one cell of the tube: masses of products and air [kg], internal energy [J].
/// </summary>
internal struct Parcel(double products, double air, double energy)
{
    /// <summary>Share of the mass that a part may lack by rounding, summed over a run [-].</summary>
    private const double RoundOff = 1e-9;

    public double Products = products;
    public double Air = air;
    public double Energy = energy;

    public readonly double Mass => Products + Air;

    /// <summary>Whether there is a gas: finite mass and energy above zero.</summary>
    public readonly bool HoldsGas => Mass > 0 && Energy > 0 && double.IsFinite(Mass + Energy);

    /// <summary>Whether neither products nor air are below zero but for round-off.</summary>
    public readonly bool IsMixture => Math.Min(Products, Air) >= -RoundOff * Mass;

    public readonly Zone<Real> Zone(GapParameters p) => new(Products, Air, Energy, p.Products, p.Air);

    public void Add(double products, double air, double energy)
    {
        Products += products;
        Air += air;
        Energy += energy;
    }
}
