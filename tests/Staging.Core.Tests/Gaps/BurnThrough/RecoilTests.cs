using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.BurnThrough;

/// <summary>The recoil of a breaking web: what it is, and which joints are pointed out.</summary>
public class RecoilTests
{
    private static readonly GapProblem Start = StartingGaps.Bore18mm;
    private static readonly BurnThroughEstimate Broken = StartingGaps.Booster.BurnThrough(Start.Surroundings.Pressure);

    [Fact]
    public void Force_is_pressure_over_the_hole_and_momentum_that_of_the_pieces()
    {
        double radius = 0.5 * Broken.OpeningDiameter.Meters;
        Assert.Equal((Broken.ChamberPressure - Start.Surroundings.Pressure).Pascals * Math.PI * radius * radius, Broken.RecoilForce.Newtons, 1e-9);
        Assert.Equal(Broken.PieceMass.Kilograms * Broken.PieceSpeed.MetersPerSecond, Broken.PieceMomentum.NewtonSeconds, 1e-15);
    }

    /// <summary>
    /// Over the slip [m] friction does the work of the energy that the push leaves between the two bodies, seen from where their common centre rests.
    /// </summary>
    private static double Slip
    {
        get
        {
            double behind = Start.Bodies.MassBehind.Kilograms, all = behind + Start.Bodies.MassAhead.Kilograms, momentum = Broken.PieceMomentum.NewtonSeconds;
            double energy = 0.5 * momentum * momentum / behind - 0.5 * momentum * momentum / all;
            double pressed = behind * (all - behind) / all * Start.Bodies.ClosingAcceleration.MetersPerSecondSquared;
            return energy / (Start.Design.Joint.Coupler.SlidingForce.Newtons + pressed);
        }
    }

    [Fact]
    public void A_coupler_is_pointed_out_up_to_the_engagement_that_friction_needs()
    {
        Assert.InRange(Slip, 0.5e-3, 2e-3);
        Assert.Empty(Told(Start));
        Assert.Empty(Told(Engaged(1.01 * Slip)));
        ModelFinding told = Assert.Single(Told(Engaged(0.99 * Slip)));
        Assert.Equal("Joint.Coupler.Engagement", told.Path);
        Assert.Equal(FindingSeverity.Warning, told.Severity);
    }

    [Fact]
    public void A_joint_that_bears_the_force_does_not_slide_and_one_that_rubs_on_nothing_never_stops()
    {
        FrictionJoint brief = Start.Design.Joint.Coupler with { Engagement = Length.FromMillimeters(0.6) };
        Assert.Empty(Told(Start.With(joint: brief with { BreakawayForce = Broken.RecoilForce })));
        FrictionJoint loose = Start.Design.Joint.Coupler with { SlidingForce = Force.Zero };
        GapProblem pulled = Start.With(joint: loose) with { Bodies = Start.Bodies with { ClosingAcceleration = Acceleration.Zero } };
        Assert.Contains("nothing stops the joint", Assert.Single(Told(pulled)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Tape_has_to_bear_the_share_of_the_force_that_comes_to_the_joint()
    {
        double share = Start.Bodies.MassAhead / (Start.Bodies.MassAhead + Start.Bodies.MassBehind);
        FrictionJoint none = Start.Design.Joint.Coupler with { BreakawayForce = Force.Zero, SlidingForce = Force.Zero };
        GapProblem taped = Start with { Bodies = Start.Bodies with { ClosingAcceleration = Acceleration.Zero } };
        Assert.Empty(Told(taped.With(joint: Taped(1.01))));
        Assert.Equal("Joint.Tape.Strength", Assert.Single(Told(taped.With(joint: Taped(0.99)))).Path);

        StageJoint Taped(double of) => StageJoint.Taped(none, JointTape.ThinPlasticFilm with { Strength = of * share * Broken.RecoilForce });
    }

    /// <summary>Two motors that break together push twice, one that breaks later does not count, and a pulse throws nothing.</summary>
    [Fact]
    public void Webs_that_break_together_add_up()
    {
        GapSource.EndBurner motor = StartingGaps.Booster, later = motor with { Delay = Duration.FromMilliseconds(5) };
        GapProblem brief = Engaged(3 * Slip);
        Assert.Empty(Told(brief));
        Assert.Single(Told(brief.With(source: new GapSource.Cluster { Motors = [motor, motor] })));
        Assert.Empty(Told(brief.With(source: new GapSource.Cluster { Motors = [motor, later] })));
        Assert.Empty(Told(Engaged(0.95 * Slip).With(source: Bench.Design.Source)));
    }

    [Fact]
    public void Without_a_web_there_is_no_recoil_however_hard_a_tape_is_pulled()
    {
        StageJoint taped = StageJoint.Taped(Start.Design.Joint.Coupler, JointTape.ThinPlasticFilm with { Strength = Force.FromNewtons(1) });
        GapProblem pulled = Start.With(joint: taped) with { Bodies = Start.Bodies with { ClosingAcceleration = Acceleration.FromMetersPerSecondSquared(-1000) } };
        Assert.Single(Told(pulled));
        Assert.Empty(Told(pulled.With(source: Bench.Design.Source)));
    }

    private static GapProblem Engaged(double metres) =>
        Start.With(joint: Start.Design.Joint.Coupler with { Engagement = Length.FromMeters(metres) });

    private static IEnumerable<ModelFinding> Told(GapProblem problem) => problem.Check().Where(f => f.Code == "GAP041");
}
