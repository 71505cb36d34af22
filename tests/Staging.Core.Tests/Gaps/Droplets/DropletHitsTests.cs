using Staging.Core.Gaps;

namespace Staging.Core.Tests.Gaps.Droplets;

/// <summary>How many droplets strike the grain.</summary>
public class DropletHitsTests
{
    private static readonly DropletHits Hits = new(3.5e-3, 18e-3, 0.01, 0.65, 2000, 1e-4);

    [Fact]
    public void Droplets_times_those_aimed_at_the_throat_times_those_that_reach_it()
    {
        // 0.2 g of products with 35 % melt, one hundredth of it in droplets of 1.0472 micrograms: 668; one in 26.4 is aimed, half of them arrive.
        double droplets = 0.01 * 0.35 * 0.2e-3 / 1.0471975511966e-9, aimed = 3.5 * 3.5 / (18.0 * 18.0);
        Assert.Equal(0.5 * aimed * droplets, Hits.Expected(0.2e-3), 1e-9);
        Assert.Equal(12.64, Hits.Expected(0.2e-3), 0.005);
    }

    [Fact]
    public void Half_the_diameter_is_eight_times_the_hits_and_a_throat_as_wide_as_the_bore_gets_half_of_all()
    {
        Assert.Equal(8 * Hits.Expected(1e-3), (Hits with { Diameter = 5e-5 }).Expected(1e-3), 1e-9);
        double mass = Math.PI / 6 * 2000 * 1e-12;
        Assert.Equal(0.5, (Hits with { Throat = 18e-3, CoarseShare = 1, GasFraction = 0 }).Expected(mass), 1e-12);
    }

    [Fact]
    public void The_chance_of_one_is_what_is_left_of_none()
    {
        double one = 1 / Hits.Expected(1);
        Assert.Equal(1 - Math.Exp(-1), Hits.Chance(one), 1e-14);
        Assert.Equal(1e-12, Hits.Chance(1e-12 * one), 1e-23);
        Assert.Equal(1, Hits.Chance(100 * one));
        Assert.Equal(0, Hits.Chance(0));
    }

    [Fact]
    public void A_history_counts_by_its_mass_so_far()
    {
        double[] times = [0, 0.01, 0.03], flows = [0, 0.02, 0];
        Assert.Equal(Hits.Chance(0.3e-3), Hits.Chance(times, flows, 1), 1e-15);
        Assert.Equal(Hits.Chance(0.1e-3), Hits.Chance(times, flows, 0.01), 1e-15);
        Assert.Equal(Hits.Chance(0.025e-3), Hits.Chance(times, flows, 0.005), 1e-15);

        // Of the falling half, a triangle of 0.2 g, a quarter is left at 20 ms.
        Assert.Equal(Hits.Chance(0.25e-3), Hits.Chance(times, flows, 0.02), 1e-15);
        Assert.Equal(0, Hits.Chance(times, flows, 0));
    }
}
