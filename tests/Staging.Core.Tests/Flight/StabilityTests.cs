using Staging.Core.Flight;
using UnitsNet;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Flight;

public class StabilityTests
{
    [Fact]
    public void A_centre_of_gravity_ahead_of_the_centre_of_pressure_is_stable()
    {
        NormalForce report = TestAirframes.Upper.Stability();
        Assert.True(report.Margin(Length.FromMeters(0.2)) > 0);
        Assert.True(report.Margin(Length.FromMeters(0.35)) < 0);
        Assert.Equal(1, report.Margin(report.CentreOfPressure - TestAirframes.Upper.Diameter), 12);
    }

    [Fact]
    public void A_boat_tail_pulls_the_centre_of_pressure_forward()
    {
        Airframe plain = TestAirframes.Upper;
        Airframe tailed = plain.With([new BodyPart { Length = Mm(20), ForeDiameter = Mm(24.8), AftDiameter = Mm(18) }], []);
        Assert.True(tailed.Stability().Slope < plain.Stability().Slope);
        Assert.True(tailed.Stability().CentreOfPressure < plain.Stability().CentreOfPressure);
    }

    /// <summary>Its centre by the formula without the fraction that becomes 0/0: 2/3 of the half cone from the front, in the limit half its length.</summary>
    [Fact]
    public void A_transition_by_one_bit_has_a_centre()
    {
        Length fore = Mm(24.8), aft = Length.FromMeters(Math.BitIncrement(fore.Meters));
        Airframe odd = TestAirframes.Upper.With([new BodyPart { Length = Mm(20), ForeDiameter = fore, AftDiameter = aft }], []);
        Assert.Equal(TestAirframes.Upper.Stability().CentreOfPressure.Meters, odd.Stability().CentreOfPressure.Meters, 9);
        Assert.Equal(0.350 + 0.010, odd.Stability().Parts.Single(p => p.Name.StartsWith("transition", StringComparison.Ordinal)).CentreOfPressure.Meters, 9);
    }

    [Fact]
    public void A_body_that_narrows_without_fins_has_no_centre_of_pressure()
    {
        var spindle = new Airframe
        {
            Nose = new Nose { Shape = NoseShape.Cone, Length = Mm(40), Diameter = Mm(10) },
            Body = [new BodyPart { Length = Mm(60), ForeDiameter = Mm(30), AftDiameter = Mm(20) }],
            Fins = [],
        };
        InvalidModelException refused = Assert.Throws<InvalidModelException>(() => spindle.Stability());
        Assert.Contains("FLT032", refused.Message, StringComparison.Ordinal);
    }

    /// <summary>Six fins: K = 1/2 in the interference, everything else as for three (equation of the thesis, worked by hand).</summary>
    [Fact]
    public void Six_fins_interfere_half_as_much()
    {
        FinGroup three = TestAirframes.Upper.Fins[0], six = three with { Count = 6 };
        double Slope(FinGroup fins) => (TestAirframes.Upper with { Fins = [fins] }).Stability().Parts.Single(p => p.Name.StartsWith("fins", StringComparison.Ordinal)).Slope;
        double share = 12.4 / (40 + 12.4);
        Assert.Equal(2 * (1 + 0.5 * share) / (1 + share), Slope(six) / Slope(three), 12);
    }

    [Fact]
    public void Larger_fins_move_it_aft()
    {
        Airframe larger = TestAirframes.Upper with { Fins = [TestAirframes.Upper.Fins[0] with { Span = Mm(60) }] };
        Assert.True(larger.Stability().CentreOfPressure > TestAirframes.Upper.Stability().CentreOfPressure);
    }

    [Fact]
    public void Margins_are_given_for_every_body_full_and_burnt()
    {
        StackStability stack = TestAirframes.Stack;
        Assert.Empty(stack.Check());
        Assert.Equal(["booster + sustainer", "booster + sustainer", "sustainer", "sustainer"], stack.Margins().Select(m => m.Body));
        StaticMargin full = stack.Margins()[0], burnt = stack.Margins()[1];
        Assert.True(burnt.CentreOfGravity < full.CentreOfGravity);
        Assert.True(burnt.Calibres > full.Calibres);
    }

    [Fact]
    public void Every_failure_case_has_the_margin_of_what_flies_on()
    {
        StackStability stack = TestAirframes.Stack;
        StaticMargin[] failureCases = [.. stack.FailureMargins()];
        Assert.Equal(
            [FailureKind.UnlitAndJoined, FailureKind.UnlitAndParted, FailureKind.LitLate, FailureKind.LitLate, FailureKind.EjectionFailure], failureCases.Select(b => b.Failure!.Value));
        Assert.All(stack.Margins(), b => Assert.Null(b.Failure));
        // The burnt booster with a full, cold sustainer on it; the mass of the sustainer's propellant is not gone.
        double m = 0.040 + 0.021 + 0.022 + 0.011;
        Assert.Equal(m, stack.Plan.LiftOffMass.Kilograms - 0.010, 12);
        Assert.Equal(stack.CentreOfGravity(0, 0), failureCases[0].CentreOfGravity);
        Assert.Equal("booster + sustainer", failureCases[0].Body);
        Assert.Equal(stack.CentreOfGravity(1, 1), failureCases[1].CentreOfGravity);
        Assert.Equal(stack.Margins()[3].Calibres, failureCases[4].Calibres);
        Assert.Equal(
            ["booster + sustainer, burnt, unlit and joined", "sustainer, full, unlit and parted", "sustainer, full, lit late", "sustainer, burnt, lit late", "sustainer, burnt, nothing ejected"],
            failureCases.Select(b => b.ToString().Split(':')[0]));
        Assert.StartsWith("sustainer, burnt: margin ", stack.Margins()[3].ToString(), StringComparison.Ordinal);
        // Each case that is flown has its margin.
        FailureKind[] flown = [.. stack.Plan.Flown().FailureCases.Select(b => b.Kind).Distinct()];
        Assert.Equal(flown.Order(), failureCases.Select(b => b.Failure!.Value).Distinct().Order());
    }

    [Fact]
    public void The_centre_of_gravity_is_the_mean_of_the_masses_and_moves_with_the_impulse()
    {
        StackStability stack = TestAirframes.Stack;
        double expected = (0.040 * 0.20 + 0.011 * 0.315 + 0.010 * 0.32) / 0.061;
        Assert.Equal(expected, stack.CentreOfGravity(1, 1).Meters, 12);
        Assert.Equal(stack.CentreOfGravity(0, 1), stack.CentreOfGravityAt(0, Seconds(0)));
        Assert.Equal(stack.CentreOfGravity(0, 0).Meters, stack.CentreOfGravityAt(0, Seconds(5)).Meters, 12);
    }

    [Fact]
    public void Lists_of_the_wrong_length_are_refused()
    {
        StackStability broken = TestAirframes.Stack with { Airframes = [TestAirframes.Upper] };
        Assert.Contains(broken.Check(), f => f.Code == "FLT040");
        Assert.Throws<InvalidModelException>(() => broken.Margins());
        StackStability unbalanced = TestAirframes.Stack with { Balance = [TestAirframes.Stack.Balance[0]] };
        foreach (Func<Length> ask in (ReadOnlySpan<Func<Length>>)[() => unbalanced.CentreOfGravity(0, 1), () => unbalanced.CentreOfGravityAt(0, Seconds(0))])
            Assert.Contains("FLT040", Assert.Throws<InvalidModelException>(() => ask()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_that_do_not_meet_are_found()
    {
        Airframe step = TestAirframes.Upper.With([BodyPart.Tube(Mm(50), Mm(30))], [TestAirframes.Upper.Fins[0] with { Station = Mm(380), BodyDiameter = Mm(30) }]);
        Assert.Equal(["FLT030", "FLT031"], step.Check().Select(f => f.Code));
    }

    [Fact]
    public void A_body_wider_than_the_nose_before_it_is_found()
    {
        Airframe step = TestAirframes.Upper with { Nose = TestAirframes.Upper.Nose with { Diameter = Mm(20) } };
        Assert.Equal(["Body[0].ForeDiameter"], step.Check().Where(f => f.Code == "FLT030").Select(f => f.Path));
    }

    [Theory]
    [InlineData(24.9, true)]
    [InlineData(30, false)]
    public void Fins_that_name_another_body_are_told(double named, bool fits)
    {
        Airframe airframe = TestAirframes.Upper with { Fins = [TestAirframes.Upper.Fins[0] with { BodyDiameter = Mm(named) }] };
        Assert.Equal(fits ? [] : ["FLT033"], airframe.Check().Select(f => f.Code));
    }

    /// <summary>On a transition from 40 to 20 mm the body under the middle of the root is what counts.</summary>
    [Fact]
    public void Fins_on_a_transition_stand_on_the_diameter_under_them()
    {
        FinGroup fins = TestAirframes.Upper.Fins[0] with { Station = Mm(145), BodyDiameter = Mm(30) };
        var airframe = new Airframe
        {
            Nose = new Nose { Shape = NoseShape.Ogive, Length = Mm(120), Diameter = Mm(40) },
            Body = [new BodyPart { Length = Mm(100), ForeDiameter = Mm(40), AftDiameter = Mm(20) }],
            Fins = [fins],
        };
        Assert.Empty(airframe.Check());
        Assert.Equal("FLT033", Assert.Single((airframe with { Fins = [fins with { Station = Mm(125) }] }).Check()).Code);
    }

    [Fact]
    public void Five_fins_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => TestAirframes.Upper.Fins[0] with { Count = 5 });

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
