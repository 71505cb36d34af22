using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Staging.Core.Solving;

namespace Staging.Core.Tests.Solving;

/// <summary>Factors and solutions of small matrices.</summary>
public class LuFactorsTests
{
    [Fact]
    public void A_system_that_needs_exchanges_is_solved()
    {
        // Rows in an order in which every leading pivot is zero.
        double[] a = [0, 0, 2, 1, 0, 0, 0, 3, 0], b = [4, 5, 6];
        int[] pivots = new int[3];
        Assert.True(LuFactors.Factorise(a, [1, 1, 1], pivots));
        LuFactors.Solve(a, pivots, b);
        Assert.Equal([5, 2, 2], b);
    }

    [Fact]
    public void The_diagonal_is_the_pivot_in_any_unit()
    {
        // The second row is in a unit a million times smaller: its numbers are the larger ones, and it is no pivot of the first column.
        double[] a = [2, 1, 1e6, 3e6], b = [3, 4e6], weights = [1, 1e-6];
        int[] pivots = new int[2];
        Assert.True(LuFactors.Factorise(a, weights, pivots));
        Assert.Equal([0, 1], pivots);
        LuFactors.Solve(a, pivots, b);
        Assert.Equal([1, 1], b);
    }

    [Fact]
    public void A_diagonal_of_next_to_nothing_is_not_the_pivot()
    {
        double[] a = [1e-17, 1, 1, 1], b = [1, 2];
        int[] pivots = new int[2];
        Assert.True(LuFactors.Factorise(a, [1, 1], pivots));
        Assert.Equal([1, 1], pivots);
        LuFactors.Solve(a, pivots, b);
        Assert.Equal([1, 1], b);
    }

    [Theory]
    [InlineData(1.0, 2.0, 2.0, 4.0)]
    [InlineData(0.0, 0.0, 0.0, 0.0)]
    [InlineData(double.NaN, 0.0, 0.0, 1.0)]
    [InlineData(1.0, 0.0, 0.0, double.PositiveInfinity)]
    public void A_singular_or_undefined_matrix_is_refused(double a, double b, double c, double d) =>
        Assert.False(LuFactors.Factorise([a, b, c, d], [1, 1], new int[2]));

    [Property(Arbitrary = [typeof(Systems)], MaxTest = 200)]
    public bool The_solution_put_in_gives_back_the_right_hand_side(LinearSystem s)
    {
        int n = s.Right.Length;
        double[] factors = [.. s.Matrix], x = [.. s.Right];
        int[] pivots = new int[n];
        if (!LuFactors.Factorise(factors, [.. Enumerable.Repeat(1.0, n)], pivots))
            return false;
        LuFactors.Solve(factors, pivots, x);
        double size = 1 + x.Max(Math.Abs);
        // Rounding, and what the least pivot of a millionth makes of it.
        return Enumerable.Range(0, n).All(i => Math.Abs(s.Matrix.Skip(i * n).Take(n).Zip(x, (m, v) => m * v).Sum() - s.Right[i]) <= 2.3e-16 * 1e6 * n * size);
    }

    public sealed record LinearSystem(ImmutableArray<double> Matrix, ImmutableArray<double> Right);

    /// <summary>Systems of 1 to 12 unknowns with entries in [-1, 1].</summary>
    public static class Systems
    {
        public static Arbitrary<LinearSystem> Arbitrary() =>
            (from n in Gen.Choose(1, 12)
             from matrix in Entry().ArrayOf(n * n)
             from right in Entry().ArrayOf(n)
             select new LinearSystem([.. matrix], [.. right])).ToArbitrary();

        private static Gen<double> Entry() => Gen.Choose(0, int.MaxValue).Select(k => 2.0 * k / int.MaxValue - 1);
    }
}
