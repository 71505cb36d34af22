namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// The cells of a tube as one array a quantity, with room for cells that a receding left end adds, ghosts and idle
/// lanes.
/// </summary>
/// <remarks>
/// Cell i of the tube stands at index First + i. A step reads the present arrays and writes the next ones, so a bad
/// step costs nothing to undo.
/// </remarks>
internal sealed class TubeArrays
{
    /// <summary>Idle cells behind the last one: the widest lanes, twice.</summary>
    public const int Idle = 16;

    /// <summary>
    /// Cells swept together: small enough that the face values of a tile stay in the first-level cache.
    /// </summary>
    public const int Tile = 192;

    /// <summary>Distance of the face quantities in the scratch array.</summary>
    public const int Stride = Tile + Idle;

    /// <summary>Cells before the first one: a ghost, and two for its own slopes.</summary>
    public const int Border = 3;

    public TubeArrays(int cells, int room)
    {
        int n = room + Border + cells + Idle;
        First = room + Border;
        End = First + cells;
        Density = new double[n];
        Momentum = new double[n];
        Energy = new double[n];
        Products = new double[n];
        NextDensity = new double[n];
        NextMomentum = new double[n];
        NextEnergy = new double[n];
        NextProducts = new double[n];
        Velocity = new double[n];
        Pressure = new double[n];
        Fraction = new double[n];
        Array.Fill(Density, 1);
        Array.Fill(NextDensity, 1);
        Array.Fill(Energy, 1);
        Array.Fill(NextEnergy, 1);
        Array.Fill(Pressure, 1);
    }

    /// <summary>Index of the first cell.</summary>
    public int First { get; private set; }

    /// <summary>Index behind the last cell.</summary>
    public int End { get; }

    public int Count => End - First;

    /// <summary>rho, a unit of volume.</summary>
    public double[] Density { get; private set; }

    /// <summary>rho u, a unit of volume.</summary>
    public double[] Momentum { get; private set; }

    /// <summary>Internal and kinetic energy a unit of volume.</summary>
    public double[] Energy { get; private set; }

    /// <summary>rho Y, a unit of volume.</summary>
    public double[] Products { get; private set; }

    public double[] NextDensity { get; private set; }

    public double[] NextMomentum { get; private set; }

    public double[] NextEnergy { get; private set; }

    public double[] NextProducts { get; private set; }

    public double[] Velocity { get; }

    public double[] Pressure { get; }

    /// <summary>Mass fraction Y of products.</summary>
    public double[] Fraction { get; }

    /// <summary>Left and right face values of a tile (rho, u, p, Y each), then the fluxes through its faces.</summary>
    public double[] Scratch { get; } = new double[12 * Stride];

    /// <summary>Makes the next state the present one, or takes that back.</summary>
    public void Swap()
    {
        (Density, NextDensity) = (NextDensity, Density);
        (Momentum, NextMomentum) = (NextMomentum, Momentum);
        (Energy, NextEnergy) = (NextEnergy, Energy);
        (Products, NextProducts) = (NextProducts, Products);
    }

    /// <summary>Cuts the first cell, grown to twice its length, in two.</summary>
    public void SplitFirst()
    {
        int i = First--;
        Density[First] = Density[i];
        Momentum[First] = Momentum[i];
        Energy[First] = Energy[i];
        Products[First] = Products[i];
    }

    /// <summary>
    /// Repeats the last cell into the idle lanes, so that what they compute is never greater or less.
    /// </summary>
    public void FillIdle()
    {
        int last = End - 1;
        Density.AsSpan(End).Fill(Density[last]);
        Momentum.AsSpan(End).Fill(Momentum[last]);
        Energy.AsSpan(End).Fill(Energy[last]);
        Products.AsSpan(End).Fill(Products[last]);
    }
}
