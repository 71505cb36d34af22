using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

public class DistributionTests
{
    public static TheoryData<Distribution> All =>
    [
        Distribution.Uniform(-2, 5),
        Distribution.Normal(3, 2),
        Distribution.TruncatedNormal(0, 1, -0.5, 2),
        Distribution.TruncatedNormal(0, 1, 6, 9),
        Distribution.LogNormal(4, 1.5),
        Distribution.Triangular(1, 1, 3),
        Distribution.Triangular(1, 2.5, 3),
        Distribution.Discrete((3, 1), (1, 2), (2, 1)),
    ];

    [Theory]
    [MemberData(nameof(All))]
    public void Quantiles_never_fall(Distribution d)
    {
        double[] values = [.. Enumerable.Range(1, 9999).Select(i => d.Quantile(i / 10000.0))];
        Assert.All(values.Zip(values.Skip(1)), p => Assert.True(p.First <= p.Second));
    }

    /// <summary>A weight beside which another vanishes gives equal shares: the first value whose share lies above counts, as a scan finds it.</summary>
    [Fact]
    public void A_listed_value_is_the_first_whose_share_lies_above()
    {
        for (ulong seed = 0; seed < 200; seed++)
        {
            var draws = new CaseDraws(9, seed);
            (double Value, double Weight)[] listed = [.. Enumerable.Range(0, 1 + (int)(seed % 9)).Select(i => ((double)i, Math.Pow(10, -20 * Math.Floor(3 * draws.Uniform((uint)i)))))];
            Distribution d = Distribution.Discrete([.. listed]);
            double total = listed.Sum(l => l.Weight), sum = 0;
            double[] upTo = [.. listed.Select(l => (sum += l.Weight) / total)];
            foreach (double u in upTo.Where(u => u < 1).SelectMany(u => (double[])[Math.BitDecrement(u), u, Math.BitIncrement(u)]).Where(u => u is > 0 and < 1))
                Assert.Equal(Math.Min(upTo.TakeWhile(end => u >= end).Count(), listed.Length - 1), d.Quantile(u));
        }
    }

    [Fact]
    public void The_widest_ends_still_give_finite_values_in_order()
    {
        Distribution[] widest = [Distribution.Triangular(-1e300, 0, 1e300), Distribution.Triangular(-1e300, -1e300, 1e300), Distribution.Uniform(-1e300, 1e300)];
        foreach (Distribution spread in widest)
        {
            double[] values = [.. Enumerable.Range(1, 99).Select(i => spread.Quantile(i / 100.0))];
            Assert.All(values, v => Assert.InRange(v, -1e300, 1e300));
            Assert.Equal(values.Order(), values);
        }
    }

    [Fact]
    public void Quantiles_undo_the_distribution_function()
    {
        foreach (double u in new[] { 1e-12, 1e-3, 0.2, 0.5, 0.9, 0.999 })
        {
            Assert.Equal(u, NormalTable.Below(NormalTable.Quantile(u)), 1e-12);
            double x = Distribution.Triangular(1, 2.5, 4).Quantile(u);
            double below = x <= 2.5 ? (x - 1) * (x - 1) / (3 * 1.5) : 1 - (4 - x) * (4 - x) / (3 * 1.5);
            Assert.Equal(u, below, 1e-12);
            double z = Distribution.TruncatedNormal(1, 2, 0, 4).Quantile(u);
            double share = (NormalTable.Below((z - 1) / 2) - NormalTable.Below(-0.5)) / (NormalTable.Below(1.5) - NormalTable.Below(-0.5));
            Assert.Equal(u, share, 1e-12);
        }
    }

    [Fact]
    public void A_far_tail_keeps_its_digits()
    {
        // Between 6 and 9 the upper tail falls from 1e-9 to 1e-19: its median stands where half of the tail above 6 is left, 6.1121 (own series of the tail).
        double median = Distribution.TruncatedNormal(0, 1, 6, 9).Median;
        double tail(double z) => NormalTable.Below(-z);
        Assert.Equal(0.5, (tail(6) - tail(median)) / (tail(6) - tail(9)), 1e-9);
        Assert.Equal(Distribution.TruncatedNormal(0, 1, -9, -6).Median, -median, 1e-12);
    }

    [Fact]
    public void Listed_values_come_as_often_as_their_weights_say()
    {
        Distribution d = Distribution.Discrete((3, 1), (1, 2), (2, 1));
        Assert.Equal((1, 1, 2, 3), (d.Quantile(0.1), d.Quantile(0.49), d.Quantile(0.6), d.Quantile(0.8)));
        Assert.Equal(3, d.Quantile(0.9999));
    }

    [Fact]
    public void One_standard_deviation_of_a_log_normal_spread_is_its_factor() =>
        Assert.Equal(4 * 1.5, Distribution.LogNormal(4, 1.5).Quantile(NormalTable.Below(1)), 1e-12);

    [Fact]
    public void A_sourced_range_becomes_least_likeliest_and_greatest()
    {
        var judged = new Provenance { Source = "invented", How = Evidence.Invented };
        var range = new SourcedRange("x", "N", min: 10, nominal: 20, max: 60, judged, judged);
        Assert.Equal(Distribution.Triangular(10, 20, 60), Distribution.Of(range));
    }

    [Fact]
    public void Wrong_ends_are_refused_by_name()
    {
        Assert.Equal("high", Assert.Throws<ArgumentOutOfRangeException>(() => Distribution.Uniform(2, 2)).ParamName);
        Assert.Equal("standardDeviation", Assert.Throws<ArgumentOutOfRangeException>(() => Distribution.Normal(2, 0)).ParamName);
        Assert.Equal("mode", Assert.Throws<ArgumentOutOfRangeException>(() => Distribution.Triangular(1, 4, 3)).ParamName);
        Assert.Equal("median", Assert.Throws<ArgumentOutOfRangeException>(() => Distribution.LogNormal(-1, 2)).ParamName);
        Assert.Equal("mean", Assert.Throws<ArgumentOutOfRangeException>(() => Distribution.Normal(double.NaN, 2)).ParamName);
        Assert.Throws<ArgumentException>(() => Distribution.Discrete((1, 1), (1, 2)));
        Assert.Throws<ArgumentException>(() => Distribution.Discrete());
        Assert.Throws<ArgumentOutOfRangeException>(() => Distribution.Uniform(0, 1).Quantile(0));
    }

    [Fact]
    public void A_distribution_prints_its_kind_and_numbers_and_is_equal_by_them()
    {
        string[] said = [.. All.Select(row => row.Data.ToString())];
        Assert.Equal(said, said.Distinct());
        Assert.Equal("triangular from 1 over 2.5 to 3", said[6]);
        Assert.Equal("listed 1:2 2:1 3:1", said[7]);
        Assert.Equal(All.Select(row => row.Data), All.Select(row => row.Data));
        Assert.NotEqual(Distribution.Discrete((1, 1), (2, 1)), Distribution.Discrete((1, 1), (2, 2)));
    }
}
