using System.Numerics;
using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

public class ExactSumTests
{
    [Fact]
    public void Cancellation_leaves_the_small_term()
    {
        var sum = new ExactSum();
        foreach (double x in new[] { 1e300, 1, -1e300, 1e-300, double.Epsilon, -1 })
            sum.Add(x);
        Assert.Equal(1e-300, Mean(sum, 1));
        sum.Add(-1e-300);
        Assert.Equal(double.Epsilon, Mean(sum, 1));
    }

    [Fact]
    public void The_order_of_terms_and_of_parts_leaves_no_trace()
    {
        double[] terms = [.. Enumerable.Range(0, 2000).Select(i => new CaseDraws(1, (ulong)i)).Select(c => Math.ScaleB(c.Normal(0), (int)(200 * (c.Uniform(1) - 0.5))))];
        ExactSum whole = Of(terms), back = Of(terms.Reverse()), parts = Of(terms.Where((_, i) => i % 3 == 0));
        parts.Add(Of(terms.Where((_, i) => i % 3 == 2)));
        parts.Add(Of(terms.Where((_, i) => i % 3 == 1)));
        Assert.Equal(whole.ToText(), back.ToText());
        Assert.Equal(whole.ToText(), parts.ToText());
        Assert.Equal(whole.ToText(), ExactSum.FromText(whole.ToText()).ToText());
    }

    [Theory]
    [InlineData(1.5)]
    [InlineData(-3.25e-200)]
    [InlineData(1.7976931348623157e308)]
    [InlineData(5e-324)]
    [InlineData(-0.1)]
    public void A_square_is_taken_without_rounding(double x)
    {
        var squares = new ExactSum();
        squares.AddSquare(x);
        ulong bits = BitConverter.DoubleToUInt64Bits(x);
        int field = (int)(bits >> 52) & 0x7FF;
        BigInteger mantissa = (bits & ((1UL << 52) - 1)) | (field == 0 ? 0 : 1UL << 52);
        Assert.Equal(mantissa * mantissa << (2 * (Math.Max(field, 1) - 1075) + 2148), squares.Register());
    }

    [Fact]
    public void Moments_of_numbers_far_from_zero_keep_their_digits()
    {
        // 1e9 + (1, 2, 3, 4): mean 1e9 + 2.5, variance 5/3; a running sum of squares in doubles would give rubbish.
        double[] values = [1e9 + 1, 1e9 + 2, 1e9 + 3, 1e9 + 4];
        var squares = new ExactSum();
        foreach (double v in values)
            squares.AddSquare(v);
        (double mean, double variance) = ExactSum.Moments(Of(values), squares, 4);
        Assert.Equal(1e9 + 2.5, mean);
        Assert.Equal(5.0 / 3, variance);
    }

    [Fact]
    public void A_negative_sum_has_a_negative_mean_and_survives_its_text()
    {
        ExactSum sum = Of([-1, -2, 0.5]);
        Assert.Equal(-2.5 / 3, Mean(sum, 3));
        Assert.Equal(-2.5 / 3, Mean(ExactSum.FromText(sum.ToText()), 3));
        Assert.Equal(0, Mean(new ExactSum(), 3));
    }

    private static ExactSum Of(IEnumerable<double> terms)
    {
        var sum = new ExactSum();
        foreach (double x in terms)
            sum.Add(x);
        return sum;
    }

    private static double Mean(ExactSum sum, long n) => ExactSum.Moments(sum, new ExactSum(), n).Mean;
}
