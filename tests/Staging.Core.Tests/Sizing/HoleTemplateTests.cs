using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Reviews;
using UnitsNet;

namespace Staging.Core.Tests.Sizing;

/// <summary>The places of the holes of a wall on its unrolled outside. The bench tube has a bore of 18 mm and is 250 mm long.</summary>
public class HoleTemplateTests
{
    /// <summary>Outside of the bench tube with a wall of 0.5 mm [mm].</summary>
    private const double Around = Math.PI * 19;

    [Fact]
    public void A_ring_is_marked_by_station_angle_arc_and_pitch()
    {
        HoleTemplate tube = Assert.Single(HoleTemplate.Of(Design(Ring(246, 4, 5))));
        Assert.Equal(("guide tube", 18.0, 250.0), (tube.Wall, tube.Bore!.Value.Millimeters, tube.GapLength.Millimeters));
        Assert.Equal(19, tube.OuterDiameter!.Value.Millimeters, 1e-9);
        HoleRing ring = Assert.Single(tube.Rings);
        Assert.Equal((4, "5.0 mm", 90.0), (ring.Count, ring.Drill!.Label, ring.AngleBetween.Degrees));
        Assert.Equal(246, ring.Station!.Value.Millimeters, 1e-9);
        Assert.Equal([0, 90, 180, 270], ring.Angles.Select(a => a.Degrees));
        Near([0, Around / 4, Around / 2, 3 * Around / 4], ring.Arcs.Select(a => a.Millimeters));
        Assert.Equal(Around / 4, ring.Pitch!.Value.Millimeters, 1e-9);
        // Along the outside a hole takes 2 R asin(r/R): on a curved wall a little more than its diameter.
        Assert.Equal(Around / 4 - 19 * Math.Asin(5 / 19.0), ring.Land!.Value.Millimeters, 1e-9);
        Assert.Empty(tube.Findings);
        Assert.Equal("4 x drill 5.0 mm at station 246.0 mm, every 90.0 deg = 14.92 mm round, land 9.86 mm", ring.ToString());
        Assert.Equal($"guide tube, outside diameter 19.0 mm\n  {ring}", tube.ToString());
    }

    [Fact]
    public void Neighbouring_rings_are_turned_by_half_a_step_and_stand_in_the_order_of_stations()
    {
        HoleTemplate tube = Assert.Single(HoleTemplate.Of(Design(Ring(247, 4, 3), Ring(239, 4, 3), Ring(243, 4, 3))));
        Assert.Equal([239, 243, 247], tube.Rings.Select(r => Math.Round(r.Station!.Value.Millimeters, 9)));
        Assert.Equal([0, 45, 0], tube.Rings.Select(r => r.Angles[0].Degrees));
        // In line only 1 mm would stand; turned, a good 5 mm to the neighbours and 5 mm between the first and the third.
        Assert.All(tube.Rings, r => Assert.InRange(r.Land!.Value.Millimeters, 4.9, 5.6));
    }

    [Fact]
    public void Rings_of_two_and_three_holes_are_turned_by_a_twelfth()
    {
        ImmutableArray<HoleRing> rings = Assert.Single(HoleTemplate.Of(Design(Ring(240, 2, 3), Ring(245, 3, 3)))).Rings;
        Assert.Equal([0, 180], rings[0].Angles.Select(a => a.Degrees));
        Assert.Equal([30, 150, 270], rings[1].Angles.Select(a => a.Degrees));
    }

    /// <summary>Marked in line, two single holes of 6 mm would leave 2 mm and not the land that is printed.</summary>
    [Fact]
    public void A_turned_ring_says_where_its_first_hole_is_also_where_that_is_its_only_one()
    {
        HoleTemplate two = Assert.Single(HoleTemplate.Of(Design(Ring(230, 1, 6), Ring(238, 1, 6))));
        Assert.StartsWith("1 x drill 6.0 mm at station 230.0 mm, land ", two.Rings[0].ToString(), StringComparison.Ordinal);
        Assert.StartsWith("1 x drill 6.0 mm at station 238.0 mm, at 180.0 deg = 29.85 mm round, land ", two.Rings[1].ToString(), StringComparison.Ordinal);
        HoleTemplate below = Assert.Single(HoleTemplate.Of(Design(Ring(230, 4, 3), Ring(235, 1, 3), Ring(240, 4, 3))));
        Assert.Contains(", at 45.0 deg = 7.46 mm round, land ", below.Rings[1].ToString(), StringComparison.Ordinal);
        HoleTemplate fours = Assert.Single(HoleTemplate.Of(Design(Ring(239, 4, 3), Ring(243, 4, 3))));
        Assert.Contains(", every 90.0 deg = 14.92 mm round from 45.0 deg on = 7.46 mm round, land ", fours.Rings[1].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_ring_turned_by_nearly_its_whole_step_begins_at_0()
    {
        HoleTemplate tube = Assert.Single(HoleTemplate.Of(Design(Ring(230, 11, 0.5), Ring(232, 11, 0.5), Ring(234, 11, 0.5))));
        Assert.All(tube.Rings, r => Assert.InRange(r.Angles[0].Degrees, 0, r.AngleBetween.Degrees - 1e-6));
        Assert.All(tube.Rings, r => Assert.InRange(r.Angles[^1].Degrees, 0, 360 - 1e-6));
    }

    [Theory]
    [InlineData(4, 6, 3)]
    [InlineData(5, 7, 4)]
    [InlineData(1, 9, 6)]
    [InlineData(8, 8, 5)]
    public void Land_is_the_least_over_all_pairs_of_holes(int lower, int upper, double apart)
    {
        HoleTemplate tube = Assert.Single(HoleTemplate.Of(Design(Ring(230, lower, 2.5), Ring(230 + apart, upper, 2))));
        (double Arc, double Up, double Radius)[] holes =
            [.. tube.Rings.SelectMany(r => r.Arcs.Select(a => (a.Millimeters, r.Station!.Value.Millimeters, 0.5 * r.Diameter.Millimeters)))];
        foreach (HoleRing ring in tube.Rings)
        {
            double least = double.PositiveInfinity;
            foreach (var one in holes.Where(h => h.Up == ring.Station!.Value.Millimeters))
            {
                foreach (var other in holes.Where(h => h != one))
                {
                    double x = Math.IEEERemainder(one.Arc - other.Arc, Around), y = one.Up - other.Up;
                    least = Math.Min(least, Math.Sqrt(x * x + y * y) - Reach(x, y, one.Radius) - Reach(x, y, other.Radius));
                }
            }

            Assert.Equal(least, ring.Land!.Value.Millimeters, 1e-9);
        }

        // The outline of a hole on the unrolled tube, as an ellipse with half axes R asin(r/R) and r.
        static double Reach(double x, double y, double r)
        {
            double angle = Math.Atan2(y / r, x / (9.5 * Math.Asin(r / 9.5)));
            return Math.Sqrt(Math.Pow(9.5 * Math.Asin(r / 9.5) * Math.Cos(angle), 2) + Math.Pow(r * Math.Sin(angle), 2));
        }
    }

    [Theory]
    [InlineData(12, 5, "SIZ010")]
    [InlineData(12, 4, "SIZ011")]
    [InlineData(12, 3.5, null)]
    [InlineData(3, 15.1, "SIZ011")]
    [InlineData(1, 19.5, "SIZ010")]
    public void Holes_that_leave_no_wall_or_little_are_reported(int count, double diameter, string? code)
    {
        // 12 holes have a pitch of 4.97 mm: one of 4 mm leaves 0.94 mm, one of 3.5 mm 1.5 mm. Three of 15.1 mm leave 2.5 mm, and a
        // quarter of the hole is 3.8 mm. A hole of 19.5 mm is wider than the tube.
        HoleTemplate tube = Assert.Single(HoleTemplate.Of(Design(Ring(240, count, diameter))));
        Assert.Equal(code is null ? [] : [code], tube.Findings.Select(f => f.Code));
    }

    [Fact]
    public void Holes_spread_over_a_length_become_the_rings_that_leave_most_wall()
    {
        Vent vent = Ring(235, 6, 3) with { AxialLength = Length.FromMillimeters(23) };
        HoleTemplate tube = Assert.Single(HoleTemplate.Of(Design(vent)));
        Assert.Equal(6, tube.Rings.Sum(r => r.Count));
        Assert.Equal((225.0, 245.0), (Math.Round(tube.Rings[0].Station!.Value.Millimeters, 9), Math.Round(tube.Rings[^1].Station!.Value.Millimeters, 9)));
        // Two rings of three leave 17 mm between neighbours of a ring; three of two leave less between first and third.
        Assert.Equal([3, 3], tube.Rings.Select(r => r.Count));
        Assert.Empty(tube.Findings);
    }

    [Fact]
    public void A_side_cut_open_is_not_sold_as_holes()
    {
        GapProblem open = Bench.Gap.WithVents(new VentLayout { HoleCount = 4 }, Area.FromSquareMillimeters(3000));
        HoleTemplate tube = Assert.Single(HoleTemplate.Of(open.Design));
        Assert.Contains(tube.Findings, f => f is { Code: "SIZ010", Severity: FindingSeverity.Error });
    }

    [Fact]
    public void Every_nested_wall_has_its_own_diameter()
    {
        ImmutableArray<HoleTemplate> walls = HoleTemplate.Of(Nested(Out(4, 6) with { Station = Length.FromMillimeters(200) }));
        Assert.Equal(["guide tube", "outer tube"], walls.Select(w => w.Wall));
        Assert.Equal([19, 25], walls.Select(w => Math.Round(w.OuterDiameter!.Value.Millimeters, 9)));
        Assert.Equal(Math.PI * 25 / 4, walls[1].Rings[0].Pitch!.Value.Millimeters, 1e-9);
        Assert.All(walls, w => Assert.Empty(w.Findings));
    }

    [Fact]
    public void Holes_whose_place_is_not_stated_are_listed_and_said_so()
    {
        HoleTemplate outer = HoleTemplate.Of(Nested(Out(4, 6)))[1];
        HoleRing ring = Assert.Single(outer.Rings);
        Assert.Equal((null, null, null, 4), (ring.Station, ring.Pitch, ring.Land, ring.Count));
        Assert.Empty(ring.Arcs);
        Assert.Equal("SIZ012", Assert.Single(outer.Findings).Code);
        Assert.Equal("4 x drill 6.0 mm at a place not stated, every 90.0 deg", ring.ToString());
    }

    [Fact]
    public void A_bore_in_steps_has_a_template_for_each_diameter()
    {
        GuideTube stepped = Bench.Design.Tube with { Steps = [new BoreStep { Station = Length.FromMillimeters(100), Bore = Length.FromMillimeters(24) }] };
        ImmutableArray<HoleTemplate> walls = HoleTemplate.Of(Bench.Design with { Tube = stepped, Vents = [Ring(240, 4, 3), Ring(50, 4, 3)] });
        Assert.Equal([25, 19], walls.Select(w => Math.Round(w.OuterDiameter!.Value.Millimeters, 9)));
    }

    [Fact]
    public void The_advised_holes_stand_where_the_drilled_run_has_them()
    {
        VentAdvice advice = (Bench.Gap with { Design = TestPlans.Lighting }).SizeVents(TestPlans.Layout);
        Vent drilled = advice.Run!.Problem.Design.Vents[0];
        HoleRing ring = Assert.Single(Assert.Single(HoleTemplate.Of(advice)).Rings);
        Assert.Equal((drilled.Holes.Count, advice.Walls[0].Drilled!.Drill), (ring.Count, ring.Drill!));
        Assert.Equal(drilled.Station.Meters, ring.Station!.Value.Meters, 1e-12);
    }

    /// <summary>5.0 mm is a drill of two metric series: the one that was asked for names it.</summary>
    [Fact]
    public void Advised_holes_name_the_drill_that_was_taken_of_whichever_series()
    {
        GapProblem gap = Bench.Gap with { Design = TestPlans.Lighting };
        VentAdvice[] advised = [.. Enumerable.Range(1, 8)
            .Select(n => gap.SizeVents(TestPlans.Layout with { HoleCount = n, Drills = DrillSeries.MetricTenths })).Where(a => a.Walls is [{ Drilled: not null }])];
        Assert.Contains(advised, a => DrillSize.All(DrillSeries.MetricHalves).Any(d => d.Label == a.Walls[0].Drilled!.Drill.Label));
        Assert.All(advised, a => Assert.All(HoleTemplate.Of(a).SelectMany(t => t.Rings), r => Assert.Same(a.Walls[0].Drilled!.Drill, r.Drill)));
    }

    private static void Near(double[] expected, IEnumerable<double> actual) =>
        Assert.All(expected.Zip(actual), p => Assert.Equal(p.First, p.Second, 1e-9));

    private static GapDesign Design(params Vent[] vents) => Bench.Design with { Vents = [.. vents] };

    private static GapDesign Nested(JacketOpening opening) => Bench.Design with
    {
        Vents = [Ring(245, 4, 6) with { To = VentTarget.IntoJacket("outer tube") }],
        Jackets = [Jacket.Between("outer tube", Length.FromMillimeters(19), Length.FromMillimeters(24), Length.FromMillimeters(100), opening)],
    };

    private static Vent Ring(double station, int count, double diameter) => new() { Station = Length.FromMillimeters(station), Holes = Holes(count, diameter) };

    private static JacketOpening Out(int count, double diameter) => new() { Holes = Holes(count, diameter), To = VentTarget.Air };

    private static VentHoles Holes(int count, double diameter) =>
        new() { Diameter = Length.FromMillimeters(diameter), WallThickness = Length.FromMillimeters(0.5), Count = count };
}
