using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.Jets;

/// <summary>How far holes stir the gas beyond them.</summary>
public class StirringTests
{
    private const double Length_m = 0.25, Reach_m = 0.04;

    private static readonly Vent Ring = new()
    {
        Station = Length.FromMillimeters(180),
        Holes = new VentHoles { Diameter = Length.FromMillimeters(4), WallThickness = Length.FromMillimeters(0.5), Count = 8 },
    };

    [Theory]
    [InlineData(6)]
    [InlineData(30)]
    [InlineData(100)]
    public void Holes_along_a_stretch_stir_as_rings_spread_over_it_do(double stretch_mm)
    {
        Vent stretch = Ring with { AxialLength = Length.FromMillimeters(stretch_mm) };
        const int rings = 1000;
        double from = stretch.Draws(), step = (stretch.Ends() - from) / rings;
        double mean = Enumerable.Range(0, rings)
            .Average(i => (Ring with { Station = Length.FromMeters(from + (i + 0.5) * step) }).Stirring(Length_m, Reach_m));
        Assert.Equal(mean, stretch.Stirring(Length_m, Reach_m), 1e-5 * mean);
    }

    [Fact]
    public void A_ring_at_the_end_stirs_in_full_and_one_that_is_a_reach_below_by_an_e_th()
    {
        Assert.Equal(1, (Ring with { Station = Length.FromMeters(Length_m) }).Stirring(Length_m, Reach_m), 1e-12);
        Assert.Equal(Math.Exp(-1), (Ring with { Station = Length.FromMeters(Length_m - Reach_m) }).Stirring(Length_m, Reach_m), 1e-12);
    }
}
