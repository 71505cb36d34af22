using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Studies;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Reviews;
using UnitsNet;

namespace Staging.Core.Tests.Sizing;

/// <summary>One way to put a vent area into a gap: into the guide tube and every jacket on the way out.</summary>
public class VentPathTests
{
    /// <summary>An upper edge within the scan: a long gap, a firm joint, a strong source. Nested, with the holes of the outer wall far from what is asked.</summary>
    private static readonly GapProblem Nested = Bench.Gap.With(d => d with
    {
        Tube = Bench.Tube(200),
        Vents = [],
        Jackets = [Jacket.Between("outer tube", Length.FromMillimeters(19), Length.FromMillimeters(24), Length.FromMillimeters(100), Opening(4, 6)) with { OuterBore = null }],
        Joint = Bench.Joint(60),
        Source = d.Motor() with { Web = d.Web() with { Mass = Mass.FromGrams(0.3) } },
    });

    [Fact]
    public void Sizing_and_the_vent_window_of_a_question_agree_for_nested_tubes()
    {
        VentWindow sized = Nested.SizeVents(TestPlans.Layout).Widest!;
        var question = new GapQuestion { Problem = Nested, Layout = TestPlans.Layout };
        Window asked = question.VentWindow(Length.FromMillimeters(200), Axis.Factors("vent area", "mm2", 20, 6000, 8)).Widest!;
        // Both give an area that was seen to light, within 1 % and 2 % of the edge.
        Assert.InRange(asked.Low / sized.Min.SquareMillimeters, 1 / 1.0101, 1.0201);
        Assert.False(sized.ReachesScanEnd);
        Assert.InRange(asked.High / sized.Max.SquareMillimeters, 1 / 1.0201, 1.0101);
    }

    [Fact]
    public void Every_wall_on_the_way_out_gets_the_area_and_no_other()
    {
        Area total = Area.FromSquareMillimeters(100);
        Jacket inner = Nested.Design.Jackets[0] with { Name = "inner", Openings = [Opening(4, 6), Opening(1, 3) with { To = VentTarget.IntoJacket("outer") }] };
        Jacket outer = inner with { Name = "outer", Openings = [Opening(2, 5)] }, beside = outer with { Name = "beside" };
        GapDesign before = Nested.Design with { Jackets = [beside, inner, outer], Vents = [Bench.Hole(Nested.Design.Tube, 3) with { To = VentTarget.IntoJacket("inner") }] };
        GapDesign after = (Nested with { Design = before }).WithVents(TestPlans.Layout, total).Design;
        Assert.Equal("inner", Assert.Single(after.Vents).To.Jacket);
        double[] areas = [after.TotalVentArea.SquareMillimeters, .. after.Jackets.Skip(1).Select(j => j.Openings.Sum(o => o.Holes.TotalArea.SquareMillimeters))];
        Assert.All(areas, area => Assert.Equal(100, area, 1e-9));
        // Diameters within a jacket keep their ratio.
        Assert.Equal(2, after.Jackets[1].Openings[0].Holes.Diameter / after.Jackets[1].Openings[1].Holes.Diameter, 1e-12);
        // No gas comes into the jacket beside the way: its holes stay.
        Assert.Equal(beside, after.Jackets[0]);
    }

    private static JacketOpening Opening(int count, double millimetres) => new()
    {
        Holes = new VentHoles { Diameter = Length.FromMillimeters(millimetres), WallThickness = Length.FromMillimeters(0.5), Count = count },
        To = VentTarget.Air,
    };
}
