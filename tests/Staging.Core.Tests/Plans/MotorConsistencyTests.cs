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
}
