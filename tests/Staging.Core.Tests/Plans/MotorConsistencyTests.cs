using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Tests.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Plans;

/// <summary>A plan that says two things of one motor gets told so.</summary>
public class MotorConsistencyTests
{
    [Fact]
    public void The_demo_agrees_with_itself() => Assert.DoesNotContain(DemoPlan.Plan.Check(), f => f.Code.StartsWith("PLN", StringComparison.Ordinal));

    [Theory]
    [InlineData("\"burntLength\": { \"value\": 40,", "\"burntLength\": { \"value\": 70,", "PLN010", "70 mm in the 2.26 s")]
    [InlineData("\"burntLength\": { \"value\": 40,", "\"burntLength\": { \"value\": 20,", "PLN010", "20 mm in the 2.26 s")]
    [InlineData("\"grainDiameter\": { \"value\": 15,", "\"grainDiameter\": { \"value\": 11,", "PLN011", "The grain weighs 6.5 g")]
    public void A_motor_that_contradicts_itself_gets_a_finding(string passage, string instead, string code, string says)
    {
        ModelFinding finding = Assert.Single(DemoPlan.Parse(DemoPlan.With(passage, instead)).Check(), f => f.Code == code);
        Assert.Equal(FindingSeverity.Warning, finding.Severity);
        Assert.Contains(says, finding.Message, StringComparison.Ordinal);
        Assert.StartsWith("flight.stages[1].ignition.gap.design.source", finding.Path, StringComparison.Ordinal);
    }

    /// <summary>A stated pressure of 900 kPa over a throat of 3.6 mm would push with 9 N; the motor that flies has 3.8 N left.</summary>
    [Fact]
    public void A_pressure_that_the_thrust_denies_gets_a_finding()
    {
        StagingPlan plan = DemoPlan.Plan;
        var lights = (StageIgnition.ByGap)plan.Flight.Stages[1].Ignition;
        var gap = (GapIgnition)lights.Gap;
        GapSource.Booster stated = Bench.Gap.Motor() with
        {
            ChamberPressure = Pressure.FromKilopascals(900),
            NozzleThroatDiameter = Length.FromMillimeters(3.6),
        };
        StagingPlan changed = plan with
        {
            Flight = plan.Flight with
            {
                Stages = plan.Flight.Stages.Items.SetItem(1, plan.Flight.Stages[1] with
                {
                    Ignition = lights with { Gap = gap with { Design = gap.Design with { Source = stated } } },
                }),
            },
        };
        Assert.Contains("over a throat of 3.6 mm give 9.2 N", Assert.Single(changed.Check(), f => f.Code == "PLN012").Message, StringComparison.Ordinal);
    }

    /// <summary>One motor flies, or three, and one or three feed the gap; two more that are not plugged may feed it or not.</summary>
    [Theory]
    [InlineData(1, 1, 0, null)]
    [InlineData(3, 3, 0, null)]
    [InlineData(3, 1, 2, null)]
    [InlineData(1, 1, 2, null)]
    [InlineData(3, 1, 0, "Motors that feed the gap: 3; motors of 'booster' that burn through: 1. The gas")]
    [InlineData(1, 3, 0, "Motors that feed the gap: 1; motors of 'booster' that burn through: 3. The gas")]
    [InlineData(4, 1, 2, "Motors that feed the gap: 4; motors of 'booster' that burn through: 1 to 3.")]
    public void As_many_motors_feed_a_gap_as_fly_below_it(int feed, int fly, int beside, string? says)
    {
        StagingPlan plan = DemoPlan.Plan;
        Stage booster = plan.Flight.Stages[0] with { MotorCount = fly };
        if (beside > 0)
            booster = booster with { ParallelMotors = [new MotorGroup { Motor = booster.Motor, Count = beside }] };
        var one = (GapSource.EndBurner)plan.Flight.Stages[1].Gap()!.Design.Source;
        GapSource source = feed == 1 ? one : new GapSource.Cluster { Motors = [.. Enumerable.Repeat<GapSource.Motor>(one, feed)] };
        ModelFinding[] findings = [.. MotorConsistency.Of(booster, source, 101_325, "Source").Where(f => f.Code == "PLN013")];
        Assert.Equal(says is null ? 0 : 1, findings.Length);
        Assert.All(findings, f => Assert.StartsWith(says!, f.Message, StringComparison.Ordinal));
        Assert.All(findings, f => Assert.Equal((FindingSeverity.Warning, feed == 1 ? "Source" : "Source.Motors"), (f.Severity, f.Path)));
    }

    /// <summary>A small motor beside the main one is not compared with the main one, where it feeds the gap too.</summary>
    [Fact]
    public void Each_motor_of_a_cluster_is_compared_with_all_that_fly()
    {
        StagingPlan plan = DemoPlan.Plan;
        Stage below = plan.Flight.Stages[0];
        var big = (GapSource.EndBurner)plan.Flight.Stages[1].Gap()!.Design.Source;
        GapSource.EndBurner small = big with { GrainDiameter = 0.7 * big.GrainDiameter, NozzleThroatDiameter = 0.7 * big.NozzleThroatDiameter };
        Motor beside = below.Motor with
        {
            Name = "small",
            PropellantMass = 0.49 * below.Motor.PropellantMass,
            LoadedMass = 0.49 * below.Motor.LoadedMass,
            Thrust = ThrustHistory.FromColumns(below.Motor.Thrust.Time_s.Span, [.. below.Motor.Thrust.Thrust_N.ToArray().Select(t => 0.49 * t)]),
        };
        Stage both = below with { ParallelMotors = [new MotorGroup { Motor = beside, Count = 1 }] };
        var source = new GapSource.Cluster { Motors = [big, small] };
        Assert.Empty(MotorConsistency.Of(both, source, 101_325, "Source"));
        Assert.Equal(["Source.Motors[1].GrainDiameter"],
            MotorConsistency.Of(below with { MotorCount = 2 }, source, 101_325, "Source").Where(f => f.Code == "PLN011").Select(f => f.Path));
        Motor plugged = beside with { ForwardEnd = new MotorForwardEnd.Plugged() };
        Assert.Contains(MotorConsistency.Of(both with { ParallelMotors = [new MotorGroup { Motor = plugged, Count = 1 }] }, source, 101_325, "Source"), f => f.Code == "PLN011");
    }

    /// <summary>A motor that burns through seconds after the first is told of, and the gap is not watched until then: the flight is another by then.</summary>
    [Fact]
    public void A_motor_that_comes_too_late_is_told_and_not_waited_for()
    {
        StagingPlan plan = DemoPlan.Plan;
        var lights = (StageIgnition.ByGap)plan.Flight.Stages[1].Ignition;
        GapIgnition gap = plan.Flight.Stages[1].Gap()!;
        var one = (GapSource.EndBurner)gap.Design.Source;
        gap = gap with { Design = gap.Design with { Source = new GapSource.Cluster { Motors = [one, one with { Delay = Duration.FromSeconds(9) }] } } };
        Stage booster = plan.Flight.Stages[0] with { MotorCount = 2 }, upper = plan.Flight.Stages[1] with { Ignition = lights with { Gap = gap } };
        ModelFinding finding = Assert.Single((plan with { Flight = plan.Flight with { Stages = [booster, upper] } }).Check(), f => f.Code == "GAP011");
        Assert.StartsWith("The gap is watched for 1000 ms, its source lasts 9000 ms", finding.Message, StringComparison.Ordinal);
    }
}
