using Staging.Core.Flight;
using Staging.Core.Gases;
using UnitsNet;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Flight;

public class FlightPlanCheckTests
{
    [Fact]
    public void A_good_plan_has_no_finding() => Assert.Empty(TwoStages().Check());

    [Fact]
    public void Every_broken_rule_is_found()
    {
        Has("FLT001", Plan());
        Has("FLT002", Plan(Booster(), Booster(ignition: Contact())));
        Has("FLT003", TwoStages() with { Site = TwoStages().Site with { Elevation = Length.FromMeters(8000), Atmosphere = new ThinAir() } });
        Has("FLT004", Plan(Booster() with { Motor = Motor(new MotorForwardEnd.BurnsThrough()) with { PropellantMass = Mass.FromGrams(30) } }));
        Has("FLT005", Plan(Booster() with
        {
            StructureMass = Mass.FromGrams(0),
            Motor = Motor(new MotorForwardEnd.BurnsThrough()) with { LoadedMass = Mass.FromGrams(10) },
        }));
        Has("FLT006", Plan(Booster(ignition: Contact())));
        Has("FLT007", TwoStages(new StageIgnition.AtLaunch()));
        Has("FLT008", Plan(Booster() with { Motor = Motor(new MotorForwardEnd.Plugged()) }, Sustainer(Contact())));
        Has("FLT008", Plan(Booster() with { Motor = Motor(new MotorForwardEnd.Plugged()) }, Sustainer(Gap(_ => null!))));
        Has("FLT009", TwoStages(Timer(1, from: TimerStart.Separation)));
        foreach (MotorForwardEnd end in (ReadOnlySpan<MotorForwardEnd>)[new MotorForwardEnd.Plugged(), new MotorForwardEnd.Ejects { Delay = Seconds(3) }])
            Has("FLT016", Plan(Booster() with { Motor = Motor(end) }, Sustainer(Timer(1, from: TimerStart.BurnThroughBelow))));
        Has("FLT010", TwoStages() with { Stages = [Booster(), Sustainer(Contact()) with { Motor = Motor(new MotorForwardEnd.Plugged()) }] });
        Has("FLT011", Plan(Booster()));
        Has("FLT004", Plan(Booster() with { ParallelMotors = [new MotorGroup { Motor = Motor(new MotorForwardEnd.Plugged()) with { PropellantMass = Mass.FromGrams(30) }, Count = 2 }] }));
        Has("FLT013", Plan(Booster() with { ParallelMotors = [new MotorGroup { Motor = Motor(new MotorForwardEnd.BurnsThrough()), Count = 2 }] }), FindingSeverity.Warning);
        Has("FLT012", Plan(Booster() with { Recovery = Recovery.Ballistic }), FindingSeverity.Warning);
    }

    /// <summary>The test motor gives 7.775 N s in 0.85 s: 5.093 until 0.5 s, 6.766 until 0.7 s and 7.575 until 0.8 s, by trapezoids.</summary>
    [Theory]
    [InlineData(0.5, "FLT015", "Burn-through comes 0.5 s after ignition, when 34 % of the impulse is still to come")]
    [InlineData(0.7, "FLT015", "Burn-through comes 0.7 s after ignition, when 13 % of the impulse is still to come")]
    [InlineData(0.8, null, "")]
    [InlineData(0.85, null, "")]
    [InlineData(1, "FLT014", "Burn-through comes 1 s after ignition, the thrust history ends at 0.85 s")]
    public void Burn_through_stands_against_the_thrust_history(double after, string? code, string says)
    {
        FlightPlan plan = Plan(Booster() with { Motor = Motor(new MotorForwardEnd.BurnsThrough { After = Seconds(after) }) }, Sustainer(Contact()));
        ModelFinding[] findings = [.. plan.Check().Where(f => f.Path == "Stages[0].Motor.ForwardEnd")];
        Assert.Equal(code is null ? [] : [code], findings.Select(f => f.Code));
        Assert.All(findings, f => Assert.StartsWith(says, f.Message, StringComparison.Ordinal));
    }

    /// <summary>The proxy starts at the guide's elevation: straight up it stays 0 until apogee, past which it refuses off any guide.</summary>
    [Theory]
    [InlineData(90, TimerStart.BurnoutBelow, true)]
    [InlineData(90, TimerStart.Launch, true)]
    [InlineData(90, TimerStart.Apogee, false)]
    [InlineData(89, TimerStart.BurnoutBelow, false)]
    public void A_guard_on_tilt_that_cannot_refuse_is_told(double elevation, TimerStart from, bool told)
    {
        FlightPlan plan = TwoStages(Timer(1, new ElectronicsGuards { MaxTilt = Angle.FromDegrees(20) }, from: from)) with
        {
            Guide = LaunchGuide.Vertical(Length.FromMeters(1)) with { Elevation = Angle.FromDegrees(elevation) },
        };
        Assert.Equal(told ? [("FLT017", FindingSeverity.Warning, "Stages[1].Ignition.Guards.MaxTilt")] : [], plan.Check().Select(f => (f.Code, f.Severity, f.Path)));
        Assert.DoesNotContain((TwoStages(Timer(1, from: from)) with { Guide = plan.Guide }).Check(), f => f.Code == "FLT017");
    }

    [Fact]
    public void A_timer_from_a_burn_through_that_comes_is_accepted() => Assert.Empty(TwoStages(Timer(1, from: TimerStart.BurnThroughBelow)).Check());

    [Fact]
    public void Flying_a_broken_plan_throws_once_with_all_findings()
    {
        FlightPlan plan = Plan(Booster("a", Contact()), Sustainer(new StageIgnition.AtLaunch()));
        InvalidModelException thrown = Assert.Throws<InvalidModelException>(() => plan.Flown());
        Assert.Equal(["FLT006", "FLT007"], thrown.Findings.Select(f => f.Code));
    }

    [Fact]
    public void A_bad_value_is_refused_with_name_value_unit_and_range()
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => Booster() with { StructureMass = Mass.FromKilograms(-1) });
        Assert.Contains("StructureMass is -1 kg; it must be between 0 and 100000 kg", refusal.Message, StringComparison.Ordinal);
    }

    private static void Has(string code, FlightPlan plan, FindingSeverity severity = FindingSeverity.Error) =>
        Assert.Contains(plan.Check(), f => f.Code == code && f.Severity == severity);

    private sealed record ThinAir : IAtmosphere
    {
        public double Floor_m => 0;

        public double Ceiling_m => 5000;

        public AirSample At(double geometricAltitude_m) => default;
    }
}
