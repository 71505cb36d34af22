using System.Numerics;
using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

/// <summary>The table of direction numbers, by what such numbers have to do.</summary>
public class SobolPointsTests
{
    [Fact]
    public void Every_polynomial_is_primitive_and_none_comes_twice()
    {
        Assert.All(SobolTable.Rows, row => Assert.True(IsPrimitive(Polynomial(row), row.S), $"degree {row.S}, a {row.A}"));
        Assert.Equal(SobolTable.Rows.Length, SobolTable.Rows.Select(Polynomial).Distinct().Count());
    }

    [Fact]
    public void A_polynomial_that_is_not_primitive_is_caught()
    {
        Assert.False(IsPrimitive(0b11111, 4)); // x^4 + x^3 + x^2 + x + 1 divides x^5 - 1
        Assert.False(IsPrimitive(0b10101, 4)); // (x^2 + x + 1)^2
    }

    [Fact]
    public void Initial_numbers_are_odd_and_small_enough() => Assert.All(SobolTable.Rows, row =>
    {
        Assert.Equal(row.S, row.M.Length);
        Assert.All(row.M.Select((m, k) => (m, k)), p => Assert.True(p.m % 2 == 1 && p.m < 1u << (p.k + 1)));
    });

    [Theory]
    [InlineData(4, 0)]
    [InlineData(6, 128)]
    [InlineData(10, 3072)]
    public void Each_dimension_visits_each_equal_part_once(int m, long start)
    {
        for (int d = 0; d < SobolPoints.MaxDimensions; d++)
            Assert.Equal(1 << m, Enumerable.Range(0, 1 << m).Select(i => SobolPoints.Shifted(start + i, d, 17)).Select(u => (int)(u * (1 << m))).Distinct().Count());
    }

    [Fact]
    public void The_first_two_dimensions_visit_every_elementary_box_once()
    {
        const int m = 10;
        (double X, double Y)[] points = [.. Enumerable.Range(0, 1 << m).Select(i => (SobolPoints.Shifted(i, 0, 17), SobolPoints.Shifted(i, 1, 17)))];
        for (int a = 0; a <= m; a++)
            Assert.Equal(1 << m, points.Select(p => ((int)(p.X * (1 << a)), (int)(p.Y * (1 << (m - a))))).Distinct().Count());
    }

    [Theory]
    [InlineData(5)]
    [InlineData(10)]
    public void The_first_points_visit_every_orthant_once(int s) =>
        Assert.Equal(1 << s, Enumerable.Range(0, 1 << s).Select(i => Enumerable.Range(0, s).Aggregate(0, (o, d) => o * 2 + (SobolPoints.Shifted(i, d, 3) < 0.5 ? 0 : 1))).Distinct().Count());

    [Fact]
    public void An_integral_converges_faster_than_by_independent_draws()
    {
        // Product of (1 + 0.5 (u - 0.5)) over six dimensions: its mean is 1, its variance (1 + 1/48)^6 - 1 = 0.1317.
        double Error(DesignKind kind, int n)
        {
            double squares = 0;
            for (ulong seed = 0; seed < 8; seed++)
            {
                var design = new SampleDesign(kind, n, 6, seed);
                double mean = Enumerable.Range(0, n).Average(i => Enumerable.Range(0, 6).Aggregate(1.0, (f, d) => f * (0.5 + 0.5 * design.At(i, d) + 0.25)));
                squares += (mean - 1) * (mean - 1) / 8;
            }

            return Math.Sqrt(squares);
        }

        Assert.InRange(Error(DesignKind.Independent, 1 << 12), 0.3 * Math.Sqrt(0.1317 / 4096), 2 * Math.Sqrt(0.1317 / 4096));
        double coarse = Error(DesignKind.LowDiscrepancy, 1 << 8), fine = Error(DesignKind.LowDiscrepancy, 1 << 12);
        // Sixteen times the points: an error of order n^-1 falls by 16, of order n^-1/2 by 4. Halfway, in the logarithm, is 8.
        Assert.True(coarse / fine > 8, $"{coarse:G3} to {fine:G3}");
        Assert.True(fine < 0.1 * Math.Sqrt(0.1317 / 4096));
    }

    private static ulong Polynomial(SobolTable.Row row) => (1UL << row.S) | ((ulong)row.A << 1) | 1;

    /// <summary>x has the order 2^s - 1 modulo the polynomial: x^(2^s - 1) = 1, and x^((2^s - 1)/q) is not, for every prime q of it.</summary>
    private static bool IsPrimitive(ulong polynomial, int s)
    {
        ulong order = (1UL << s) - 1;
        if (Power(order, polynomial, s) != Power(0, polynomial, s))
            return false;
        for (ulong q = 2; q <= order; q++)
        {
            bool isPrime = Enumerable.Range(2, (int)Math.Sqrt(q)).All(f => (ulong)f >= q || q % (ulong)f != 0);
            if (isPrime && order % q == 0 && q < order && Power(order / q, polynomial, s) == Power(0, polynomial, s))
                return false;
        }

        return true;
    }

    private static ulong Power(ulong exponent, ulong polynomial, int s)
    {
        ulong result = 1;
        for (ulong i = 0; i < exponent; i++)
        {
            result <<= 1;
            if (BitOperations.Log2(result) == s)
                result ^= polynomial;
        }

        return s == 1 && result > 1 ? result ^ polynomial : result;
    }
}
