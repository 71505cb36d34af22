namespace Staging.Core.Gaps.Resolved;

/// <summary>A vessel of fixed volume, or one cell of the tube: masses of products and air [kg], internal energy [J].</summary>
internal struct Parcel(double products, double air, double energy)
{
    public double Products = products;
    public double Air = air;
    public double Energy = energy;

    public readonly double Mass => Products + Air;

    /// <summary>Whether there is a gas: mass and energy above zero, and no part of it below.</summary>
    public readonly bool HoldsGas => Products >= 0 && Air >= 0 && Mass > 0 && Energy > 0;

    public readonly Zone Zone(GapParameters p) => new(Products, Air, Energy, p.Products, p.Air);

    public void Add(double products, double air, double energy)
    {
        Products += products;
        Air += air;
        Energy += energy;
    }
}
