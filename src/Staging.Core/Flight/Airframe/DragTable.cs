using System.Diagnostics.CodeAnalysis;
using System.Runtime.InteropServices;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>
/// Drag coefficient against Mach number on one reference area: straight lines between points, the end values held
/// beyond them. Two with equal areas and points are equal.
/// </summary>
public sealed class DragTable : IEquatable<DragTable>
{
    private const double LargestCoefficient = 100;
    private const double LargestMach = 50;
    private readonly double[] mach;
    private readonly double[] coefficient;

    private DragTable(Area referenceArea, double[] mach, double[] coefficient)
    {
        ReferenceArea = referenceArea;
        this.mach = mach;
        this.coefficient = coefficient;
    }

    /// <summary>Reference area of the coefficient [m2].</summary>
    public Area ReferenceArea { get; }

    /// <summary>Mach numbers of the points [-], strictly rising.</summary>
    public ReadOnlyMemory<double> Mach => mach;

    /// <summary>Drag coefficients at the points [-].</summary>
    public ReadOnlyMemory<double> Coefficient => coefficient;

    private (Area Area, EquatableArray<double> Mach, EquatableArray<double> Coefficient) Content =>
        (ReferenceArea, ImmutableCollectionsMarshal.AsImmutableArray(mach), ImmutableCollectionsMarshal.AsImmutableArray(coefficient));

    /// <summary>A coefficient that does not depend on the Mach number.</summary>
    /// <param name="referenceArea">Reference area [m2], 0 to 1000 m2.</param>
    /// <param name="coefficient">Drag coefficient [-], 0 to 100.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">A value outside its range.</exception>
    public static DragTable Constant(Area referenceArea, double coefficient) =>
        FromColumns(referenceArea, [0, 1], [coefficient, coefficient]);

    /// <summary>Makes a table from two columns.</summary>
    /// <param name="referenceArea">Reference area [m2], 0 to 1000 m2.</param>
    /// <param name="mach">Mach numbers [-], strictly rising, 0 to 50, two or more.</param>
    /// <param name="coefficient">As many drag coefficients [-], 0 to 100.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">A value outside its range or order; the message names the point.</exception>
    public static DragTable FromColumns(Area referenceArea, ReadOnlySpan<double> mach, ReadOnlySpan<double> coefficient)
    {
        Guard.In(referenceArea, 0, 1000, nameof(referenceArea));
        if (mach.Length != coefficient.Length || mach.Length < 2)
            throw new ArgumentException(
                $"A drag table needs two points or more and equal columns; it has {mach.Length} and {coefficient.Length}.", nameof(mach));
        for (int i = 0; i < mach.Length; i++)
        {
            if (!(mach[i] >= 0 && mach[i] <= LargestMach) || (i > 0 && !(mach[i] > mach[i - 1])))
                throw new ArgumentException(Invariant.Text($"Point {i + 1}: the Mach number is {mach[i]:G9}; it must rise from point to "
                    + $"point, between 0 and {LargestMach}."), nameof(mach));
            if (!(coefficient[i] >= 0 && coefficient[i] <= LargestCoefficient))
                throw new ArgumentException(Invariant.Text($"Point {i + 1}: the drag coefficient is {coefficient[i]:G9}; it must be "
                    + $"between 0 and {LargestCoefficient}."), nameof(coefficient));
        }

        return new DragTable(referenceArea, mach.ToArray(), coefficient.ToArray());
    }

    /// <summary>The drag coefficient at a Mach number.</summary>
    /// <param name="machNumber">Mach number [-], at least 0.</param>
    /// <returns>Drag coefficient [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not a number.</exception>
    public double At(double machNumber)
    {
        Guard.In(machNumber, 0, double.MaxValue, property: nameof(machNumber));
        if (machNumber <= mach[0])
            return coefficient[0];
        if (machNumber >= mach[^1])
            return coefficient[^1];
        int i = Array.BinarySearch(mach, machNumber);
        i = Math.Clamp(i >= 0 ? i : ~i - 1, 0, mach.Length - 2);
        return coefficient[i] + (coefficient[i + 1] - coefficient[i]) * ((machNumber - mach[i]) / (mach[i + 1] - mach[i]));
    }

    /// <summary>The same table with every coefficient multiplied.</summary>
    /// <param name="factor">Factor [-], 0 to 100.</param>
    /// <returns>A new table.</returns>
    /// <exception cref="ArgumentException">The factor or a product is outside its range.</exception>
    public DragTable Scaled(double factor)
    {
        Guard.In(factor, 0, LargestCoefficient, property: nameof(factor));
        return FromColumns(ReferenceArea, mach, Array.ConvertAll(coefficient, c => c * factor));
    }

    /// <inheritdoc/>
    public bool Equals([NotNullWhen(true)] DragTable? other) => other is not null && Content.Equals(other.Content);

    /// <inheritdoc/>
    public override bool Equals([NotNullWhen(true)] object? obj) => Equals(obj as DragTable);

    /// <inheritdoc/>
    public override int GetHashCode() => Content.GetHashCode();
}
