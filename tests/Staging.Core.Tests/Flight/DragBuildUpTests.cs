using Staging.Core.Flight;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Flight;

public class DragBuildUpTests
{
    [Fact]
    public void A_small_model_drags_as_small_models_do()
    {
        // Common practice, no source: handbooks of the trade take 0.4 to 0.75 for a finished model.
        double total = TestAirframes.Upper.Drag(0.25).Total;
        Assert.InRange(total, 0.3, 0.9);
    }

    [Fact]
    public void The_parts_add_up_and_none_is_negative()
    {
        foreach (double M in (ReadOnlySpan<double>)[0.05, 0.3, 0.79, 0.81, 0.95, 1, 1.05, 1.19, 1.21, 2, 5])
        {
            DragEstimate drag = TestAirframes.Whole.Drag(M);
            double[] parts = [drag.BodyFriction, drag.FinFriction, drag.Forebody, drag.FinPressure, drag.Base];
            Assert.All(parts, p => Assert.True(p >= 0));
            Assert.Equal(parts.Sum(), drag.Total, 12);
        }
    }

    [Fact]
    public void Drag_rises_across_the_speed_of_sound_and_falls_beyond()
    {
        double at08 = Total(0.8), at11 = Total(1.1), at25 = Total(2.5);
        Assert.True(at11 > 1.2 * at08);
        Assert.True(at25 < at11);
    }

    [Fact]
    public void The_curve_has_no_jump()
    {
        // A steep rise changes by what a step allows, a jump by the same however small the step: over a millionth of Mach a slope of 20 in a Mach number leaves 2e-5.
        // At Mach 0.9 the two published laws of a rounded edge, with their coefficients rounded, are 0.0013 apart.
        for (int i = 50; i < 200; i++)
        {
            double M = i * 0.01;
            double allowed = i == 90 ? 1.3e-3 : 2e-5;
            Assert.True(Math.Abs(Total(M + 5e-7) / Total(M - 5e-7) - 1) < allowed, $"Jump at Mach {M:F2}: {Total(M - 5e-7)} to {Total(M + 5e-7)}.");
        }
    }

    [Fact]
    public void A_jet_fills_the_base()
    {
        double share = 1 - 18.0 * 18 / (24.8 * 24.8);
        Assert.Equal(share * TestAirframes.Upper.Drag(0.4).Base, TestAirframes.Upper.Drag(0.4, jet: 18).Base, 12);
    }

    /// <summary>The published laws of fins worked by hand, for each finish of both edges, without sweep.</summary>
    [Theory]
    [InlineData(false, false, 0.4, 0.884544 + 0.12 + 0.13 * 0.16)]
    [InlineData(false, true, 0.4, 0.884544)]
    [InlineData(true, false, 0.8, 0.531165 + 0.12 + 0.13 * 0.64)]
    [InlineData(true, true, 0.8, 0.531165)]
    [InlineData(false, false, 2, 1.4117836 + 0.125)]
    [InlineData(false, true, 2, 1.4117836)]
    [InlineData(true, false, 2, 1.09534 + 0.125)]
    [InlineData(true, true, 2, 1.09534)]
    public void Edges_of_fins_by_hand(bool round, bool tapered, double M, double expected)
    {
        FinGroup fins = TestAirframes.Upper.Fins[0] with { RoundLeadingEdge = round, TaperedTrailingEdge = tapered, Sweep = Length.Zero };
        double wave = !round || M < 1.2 ? 0 : 4 * (1.5 / 37.5) * (1.5 / 37.5) / Math.Sqrt(M * M - 1) * fins.PlanformArea.SquareMeters;
        double ours = FinDrag.Pressure(fins, M) / fins.Count;
        Assert.Equal(expected, (ours - wave) / (0.040 * 0.0015), 1e-5);
    }

    /// <summary>A cone of 10 degrees at Mach 2: (0.083 + 0.096/4)(10/10)^1.69.</summary>
    [Fact]
    public void Nose_of_a_cone_by_hand()
    {
        var cone = new Airframe
        {
            Nose = new Nose { Shape = NoseShape.Cone, Length = Length.FromMillimeters(12.4 / Math.Tan(10 * Math.PI / 180)), Diameter = Length.FromMillimeters(24.8) },
            Body = [BodyPart.Tube(Length.FromMillimeters(100), Length.FromMillimeters(24.8))],
            Fins = [],
        };
        Assert.Equal(0.107, ForebodyDrag.Of(cone, 2), 1e-12);
        Assert.Equal(0.8 * Math.Pow(Math.Sin(10 * Math.PI / 180), 2), ForebodyDrag.Of(cone, 0.5), 1e-12);
    }

    /// <summary>Where a wall turns turbulent the coefficient goes on from its laminar value, at any Mach number.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.6, 1e-4)]
    [InlineData(3, 1e-4)]
    public void Friction_has_no_step_at_transition(double M, double roughness)
    {
        double before = SkinFriction.Mean(SkinFriction.Transition, roughness, M), behind = SkinFriction.Mean(SkinFriction.Transition * (1 + 1e-9), roughness, M);
        Assert.Equal(before, behind, 1e-8 * before);
    }

    [Fact]
    public void Rough_paint_flat_edges_and_a_second_set_of_fins_cost_drag()
    {
        Airframe upper = TestAirframes.Upper;
        Assert.True(upper.Drag(0.4, roughness: 200).Total > upper.Drag(0.4).Total);
        Airframe flat = upper with { Fins = [upper.Fins[0] with { RoundLeadingEdge = false }] };
        Assert.True(flat.Drag(0.4).Total > upper.Drag(0.4).Total);
        Assert.True(TestAirframes.Whole.Drag(0.4).Total > upper.Drag(0.4).Total);
    }

    [Fact]
    public void The_table_stands_on_the_largest_cross_section_and_flies()
    {
        DragTable table = TestAirframes.Upper.DragTable(StandardAtmosphere.Us1976, Length.FromMeters(300), Length.FromMicrometers(20));
        Assert.Equal(TestAirframes.Upper.ReferenceArea, table.ReferenceArea);
        Assert.Equal(TestAirframes.Upper.Drag(0.5).Total, table.At(0.5), 12);
        FlightPlan plan = TestFlights.Plan(TestFlights.Sustainer(new StageIgnition.AtLaunch()) with { Drag = table });
        Assert.True(plan.Flown().Apogee!.Value.Meters > 100);
    }

    private static double Total(double M) => TestAirframes.Whole.Drag(M).Total;
}
