using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

public class SampleDesignTests
{
    [Theory]
    [InlineData(DesignKind.Independent)]
    [InlineData(DesignKind.LatinHypercube)]
    [InlineData(DesignKind.LowDiscrepancy)]
    public void Coordinates_lie_inside_and_follow_from_seed_case_and_dimension(DesignKind kind)
    {
        SampleDesign one = new(kind, 500, 5, 7), other = new(kind, 500, 5, 7), different = new(kind, 500, 5, 8);
        for (int i = 499; i >= 0; i--)
        {
            for (int d = 0; d < 5; d++)
            {
                double u = one.At(i, d);
                Assert.InRange(u, double.Epsilon, 1 - 1e-16);
                Assert.Equal(u, other.At(i, d));
                Assert.NotEqual(u, different.At(i, d));
            }
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    [InlineData(64)]
    [InlineData(1000)]
    public void A_latin_hypercube_visits_every_stratum_of_every_input_once(int n)
    {
        var design = new SampleDesign(DesignKind.LatinHypercube, n, 4, 3);
        for (int d = 0; d < 4; d++)
            Assert.Equal(Enumerable.Range(0, n), Enumerable.Range(0, n).Select(i => (int)(design.At(i, d) * n)).Order());
    }

    [Fact]
    public void Every_order_of_the_strata_is_equally_likely()
    {
        // 24 orders of four strata over 24 000 seeds: chi-square with 23 degrees of freedom, above 49.7 once in a thousand. The seeds are fixed.
        const int seeds = 24_000;
        var counts = new Dictionary<string, int>();
        for (ulong seed = 0; seed < seeds; seed++)
        {
            var shuffle = new StrataShuffle(4, seed);
            string order = string.Concat(Enumerable.Range(0, 4).Select(i => shuffle.Of(i, 0)));
            counts[order] = counts.GetValueOrDefault(order) + 1;
        }

        Assert.Equal(24, counts.Count);
        Assert.InRange(counts.Values.Sum(c => Math.Pow(c - seeds / 24.0, 2) / (seeds / 24.0)), 0, 49.7);
    }

    [Fact]
    public void Every_order_of_five_strata_is_equally_likely()
    {
        // 120 orders over 24 000 seeds: chi-square with 119 degrees of freedom, above 173.6 once in a thousand (from its formula). The seeds are fixed.
        const int seeds = 24_000;
        var counts = new Dictionary<string, int>();
        for (ulong seed = 0; seed < seeds; seed++)
        {
            var shuffle = new StrataShuffle(5, seed);
            string order = string.Concat(Enumerable.Range(0, 5).Select(i => shuffle.Of(i, 0)));
            counts[order] = counts.GetValueOrDefault(order) + 1;
        }

        Assert.Equal(120, counts.Count);
        Assert.InRange(counts.Values.Sum(c => Math.Pow(c - seeds / 120.0, 2) / (seeds / 120.0)), 0, 173.6);
    }

    [Fact]
    public void Independent_draws_fill_the_square_evenly()
    {
        // 16 by 16 cells, 256 000 points: chi-square with 255 degrees of freedom, above 330.5 once in a thousand. The seed is fixed.
        var design = new SampleDesign(DesignKind.Independent, 256_000, 2, 5);
        int[] cells = new int[256];
        for (int i = 0; i < 256_000; i++)
            cells[(int)(design.At(i, 0) * 16) * 16 + (int)(design.At(i, 1) * 16)]++;
        Assert.InRange(cells.Sum(c => Math.Pow(c - 1000, 2) / 1000), 0, 330.5);
    }

    [Fact]
    public void The_low_discrepancy_design_ends_at_its_table() =>
        Assert.Equal("dimensions", Assert.Throws<ArgumentOutOfRangeException>(() => new SampleDesign(DesignKind.LowDiscrepancy, 8, 41, 0)).ParamName);

    [Fact]
    public void Points_and_coordinates_outside_are_refused()
    {
        var design = new SampleDesign(DesignKind.Independent, 8, 2, 0);
        Assert.Throws<ArgumentOutOfRangeException>(() => design.At(8, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => design.At(0, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SampleDesign((DesignKind)9, 8, 2, 0));
    }
}
