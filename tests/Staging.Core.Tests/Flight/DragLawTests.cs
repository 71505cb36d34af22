using Staging.Core.Flight;
using UnitsNet;

namespace Staging.Core.Tests.Flight;

/// <summary>Each law of the drag build-up by itself: a physical property, or the published closed form worked by hand.</summary>
public class DragLawTests
{
    /// <summary>Only the flow across a swept edge presses on it: the pressure falls with the square of the cosine. 60 degrees leave a quarter.</summary>
    [Theory]
    [InlineData(false, 0.4)]
    [InlineData(true, 0.7)]
    [InlineData(false, 1.5)]
    public void Sweep_takes_the_squared_cosine_off_the_leading_edge(bool round, double M)
    {
        FinGroup straight = TestAirframes.Upper.Fins[0] with { RoundLeadingEdge = round, TaperedTrailingEdge = true, Sweep = Length.Zero };
        double Edge(double degrees) =>
            FinDrag.Pressure(straight with { Sweep = straight.Span * Math.Tan(degrees * Math.PI / 180) }, M);
        Assert.Equal(Edge(0) / 4, Edge(60), 1e-12 * Edge(0));
        Assert.Equal(Edge(0) / 2, Edge(45), 1e-12 * Edge(0));
        Assert.Equal(Edge(30), Edge(-30), 1e-12 * Edge(0));
    }

    /// <summary>Sweep moves no base: what sweep adds to or takes from a fin with a flat trailing edge is that of its leading edge.</summary>
    [Fact]
    public void Sweep_leaves_the_trailing_edge_alone()
    {
        FinGroup fins = TestAirframes.Upper.Fins[0] with { RoundLeadingEdge = false, Sweep = Length.Zero };
        double Trail(Length sweep) => FinDrag.Pressure(fins with { Sweep = sweep }, 0.5)
            - FinDrag.Pressure(fins with { Sweep = sweep, TaperedTrailingEdge = true }, 0.5);
        Assert.Equal(3 * 0.040 * 0.0015 * (0.12 + 0.13 * 0.25), Trail(Length.Zero), 1e-15);
        Assert.Equal(Trail(Length.Zero), Trail(Length.FromMillimeters(60)), 1e-15);
    }

    /// <summary>(0.083 + 0.096/M^2)(phi/10 deg)^1.69 away from 10 degrees, where the power is 1 whatever the exponent.</summary>
    [Theory]
    [InlineData(5, 1.5, 0.03894748)]
    [InlineData(5, 2, 0.03316218)]
    [InlineData(20, 2, 0.34524267)]
    [InlineData(20, 3, 0.30222178)]
    public void Wave_drag_of_a_cone_by_hand(double degrees, double M, double expected)
    {
        var cone = new Airframe
        {
            Nose = new Nose
            {
                Shape = NoseShape.Cone,
                Length = Length.FromMillimeters(12.4 / Math.Tan(degrees * Math.PI / 180)),
                Diameter = Length.FromMillimeters(24.8),
            },
            Body = [BodyPart.Tube(Length.FromMillimeters(100), Length.FromMillimeters(24.8))],
            Fins = [],
        };
        Assert.Equal(expected, ForebodyDrag.Of(cone, M), 1e-7);
    }

    /// <summary>0.25/M on the whole base; a boat-tail leaves the share of its own base, a jet the ring around it.</summary>
    [Theory]
    [InlineData(1.25)]
    [InlineData(2)]
    [InlineData(4)]
    public void Base_drag_above_the_speed_of_sound_by_hand(double M)
    {
        Airframe upper = TestAirframes.Upper;
        Assert.Equal(0.25 / M, upper.Drag(M).Base, 1e-12);
        double tail = 18.0 * 18 / (24.8 * 24.8);
        Airframe tailed = upper.With(
            [new BodyPart { Length = Length.FromMillimeters(20), ForeDiameter = Length.FromMillimeters(24.8), AftDiameter = Length.FromMillimeters(18) }], []);
        Assert.Equal(tail * 0.25 / M, tailed.Drag(M).Base, 1e-12);
        Assert.Equal((1 - tail) * 0.25 / M, upper.Drag(M, jet: 18).Base, 1e-12);
    }

    /// <summary>No suction exceeds a vacuum behind the base: 0.25/M stays below 2/(gamma M^2) up to the Mach number of the tables, 3.</summary>
    [Fact]
    public void No_base_sucks_more_than_a_vacuum()
    {
        for (double M = 1.2; M <= 3; M += 0.1)
            Assert.True(TestAirframes.Upper.Drag(M).Base < 2 / (1.4 * M * M), $"Mach {M:F1}");
    }

    /// <summary>1/(1 + 0.15 M^2)^0.58 on a turbulent wall, smooth or rough; within 2.5 % of 1 - 0.1 M^2 below the speed of sound.</summary>
    [Theory]
    [InlineData(0, 0.5, 0.978874)]
    [InlineData(0, 1, 0.922137)]
    [InlineData(0, 2, 0.761396)]
    [InlineData(1e-3, 2, 0.761396)]
    public void Compressibility_lowers_the_friction_of_a_turbulent_wall(double roughness, double M, double expected)
    {
        double share = SkinFriction.Mean(1e8, roughness, M) / SkinFriction.Mean(1e8, roughness, 0);
        Assert.Equal(expected, share, 1e-6);
        if (M <= 1)
            Assert.Equal(1 - 0.1 * M * M, share, 0.025);
        Assert.Equal(SkinFriction.Laminar(4e5), SkinFriction.Mean(4e5, roughness, M));
    }

    /// <summary>
    /// The friction of a fully rough wall does not depend on viscosity: far beyond transition its friction no longer depends on the Reynolds number, is 0.032 (k/L)^0.2
    /// (0.00803804 at a thousandth), and grows by 2^0.2 where the roughness doubles. A finish below the sublayer costs nothing.
    /// </summary>
    [Fact]
    public void A_rough_wall_depends_on_its_roughness_alone()
    {
        Assert.Equal(0.00803804, SkinFriction.Mean(1e12, 1e-3, 0), 1e-8);
        Assert.Equal(SkinFriction.Mean(1e12, 1e-3, 0), SkinFriction.Mean(1e13, 1e-3, 0), 1e-8);
        Assert.Equal(1.148698, SkinFriction.Mean(1e12, 2e-3, 0) / SkinFriction.Mean(1e12, 1e-3, 0), 1e-6);
        Assert.Equal(SkinFriction.Mean(1e6, 0, 0), SkinFriction.Mean(1e6, 1e-8, 0));
    }

    /// <summary>
    /// The join takes one value below, the other above, the mean at the speed of sound and 5/32 of the way at Mach 0.9; it is symmetric, and
    /// flat at both ends.
    /// </summary>
    [Fact]
    public void The_transonic_join_is_a_smooth_step()
    {
        Assert.Equal(3, TransonicBlend.Of(0.8, 3, 7));
        Assert.Equal(7, TransonicBlend.Of(1.2, 3, 7), 1e-12);
        Assert.Equal(5, TransonicBlend.Of(1, 3, 7), 1e-12);
        Assert.Equal(3 + 4 * 5.0 / 32, TransonicBlend.Of(0.9, 3, 7), 1e-12);
        for (double x = 0; x <= 0.3; x += 0.01)
            Assert.Equal(10, TransonicBlend.Of(1 - x, 3, 7) + TransonicBlend.Of(1 + x, 3, 7), 1e-12);
        Assert.InRange(TransonicBlend.Of(0.801, 3, 7) - 3, 0, 4 * 3 * 0.0025 * 0.0025 + 1e-12);
    }
}
