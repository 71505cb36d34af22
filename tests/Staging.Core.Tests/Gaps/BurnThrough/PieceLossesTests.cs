using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.BurnThrough;

/// <summary>What open sides lose of the pieces.</summary>
public class PieceLossesTests
{
    private const double Size = 0.006;

    [Fact]
    public void Holes_no_wider_than_a_piece_lose_none()
    {
        Assert.Equal(1, Of(6, 40).Kept);
        Assert.Equal(double.PositiveInfinity, Of(6, 40).Station);
        Assert.True(Of(6.1, 1).Kept < 1);
    }

    [Fact]
    public void An_ever_smaller_open_side_loses_nothing_and_a_wider_one_always_more()
    {
        Assert.InRange(new PieceLosses(With(0.1, 1), 0).Kept, 1 - 2e-5, 1);
        double last = 1;
        for (int count = 1; count < 200; count++)
        {
            double kept = Of(8, count).Kept;
            Assert.InRange(kept, 0, last * (1 - 1e-9));
            last = kept;
        }

        Assert.InRange(last, 0, 0.01);
    }

    [Fact]
    public void The_share_is_the_solid_angle_of_the_bore_from_the_length_without_wall()
    {
        // A/(pi D) of four 8 mm holes in an 18 mm bore: 3.5556 mm; half angle atan(9/3.5556).
        Assert.Equal(1 - 3.5556 / Math.Sqrt(3.5556 * 3.5556 + 81), Of(8, 4).Kept, 1e-5);
    }

    [Fact]
    public void A_jacket_loses_none_and_two_parts_lose_what_one_does()
    {
        GapDesign design = With(8, 4);
        Vent vent = design.Vents[0], half = vent with { Holes = vent.Holes with { Count = 2 } };
        Assert.Equal(1, new PieceLosses(design with { Vents = [vent with { To = VentTarget.IntoJacket("tube") }] }, Size).Kept);
        var parts = new PieceLosses(design with { Vents = [half with { Station = 0.5 * half.Station }, half] }, Size);
        Assert.Equal(Of(8, 4).Kept, parts.Kept, 1e-12);
        Assert.Equal(0.75 * vent.Station.Meters, parts.Station, 1e-12);
    }

    [Fact]
    public void Every_opening_counts_in_its_own_bore()
    {
        GapDesign design = With(8, 4);
        Vent vent = design.Vents[0], low = vent with { Station = 0.2 * vent.Station };
        GapDesign stepped = design with
        {
            Tube = design.Tube with { Steps = [new BoreStep { Station = 0.5 * vent.Station, Bore = Length.FromMillimeters(24) }] },
        };
        double bores = 4 * 8 * 8 * 0.25 * (1 / (18.0 * 18) + 1 / (24.0 * 24));
        var both = new PieceLosses(stepped with { Vents = [low, vent] }, Size);
        Assert.Equal(1 - Math.Cos(Math.Atan(0.5 / bores)), both.Kept, 1e-12);
        Assert.Equal(both.Kept, new PieceLosses(stepped with { Vents = [vent, low] }, Size).Kept, 1e-12);
    }

    private static PieceLosses Of(double millimetres, int count) => new(With(millimetres, count), Size);

    private static GapDesign With(double millimetres, int count) => Bench.Design with { Vents = [Bench.Hole(Bench.Tube(250), millimetres, count)] };
}
