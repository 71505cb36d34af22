using Staging.Core.Flight;
using Staging.Core.Gases;
using Staging.Core.Tests.Flight;
using UnitsNet;

namespace Staging.Core.Tests.Reference;

/// <summary>The lines a user writes to describe a flight: shown in the reference, run here.</summary>
public class FlightSnippets
{
    [Fact]
    public void A_motor()
    {
        #region motor-from-columns
        var motor = new Motor
        {
            Name = "invented motor",
            Thrust = ThrustHistory.FromColumns(time_s: [0, 0.05, 0.2, 0.8, 0.85], thrust_N: [0, 6, 20, 8, 0]),
            PropellantMass = Mass.FromGrams(10),
            LoadedMass = Mass.FromGrams(21),
            Diameter = Length.FromMillimeters(18),
            Length = Length.FromMillimeters(70),
            ForwardEnd = new MotorForwardEnd.BurnsThrough(), // delay code 0
            Provenance = new Provenance { Source = "Invented for this example", How = Evidence.Invented },
        };
        Motor upper = motor with { ForwardEnd = new MotorForwardEnd.Ejects { Delay = Duration.FromSeconds(4) } };
        Motor plugged = motor with { ForwardEnd = new MotorForwardEnd.Plugged() };
        MotorDesignation code = MotorDesignation.Parse("C12-0");
        foreach (ModelFinding odd in code.Compare(upper)) // what the name says and the columns do not
            Console.WriteLine(odd);
        #endregion
        Assert.NotEmpty(code.Compare(upper));
        Assert.NotEqual(motor, plugged);
    }

    [Fact]
    public void A_stack()
    {
        Motor lower = TestFlights.Motor(new MotorForwardEnd.BurnsThrough()), small = lower;
        Motor upper = TestFlights.Motor(new MotorForwardEnd.Ejects { Delay = Duration.FromSeconds(4) });
        #region stages-of-a-stack
        var drag = DragTable.Constant(Area.FromSquareMillimeters(490), coefficient: 0.6);
        var booster = new Stage
        {
            Name = "booster",
            StructureMass = Mass.FromGrams(22),
            Motor = lower,
            MotorCount = 1,
            ParallelMotors = [new MotorGroup { Motor = small, Count = 2 }],
            Drag = drag,
            Recovery = Recovery.Tumbling(Area.FromSquareCentimeters(30), DeploymentTrigger.AtSeparation(Duration.FromSeconds(0.1))),
            Ignition = new StageIgnition.AtLaunch(),
        };
        var sustainer = new Stage
        {
            Name = "sustainer",
            StructureMass = Mass.FromGrams(40),
            Motor = upper,
            MotorCount = 1,
            Drag = drag,
            Recovery = Recovery.RoundParachute(Length.FromMillimeters(300), dragCoefficient: 0.75, DeploymentTrigger.ByMotorDelay),
            Ignition = new StageIgnition.ByContact { Lag = Duration.FromMilliseconds(20) },
        };
        #endregion
        #region flight-of-a-stack
        var plan = new FlightPlan
        {
            Stages = [booster, sustainer],
            Guide = LaunchGuide.Vertical(Length.FromMeters(1.2)),
            Site = new LaunchSite
            {
                Atmosphere = StandardAtmosphere.Us1976,
                Elevation = Length.FromMeters(200),
                Wind = Speed.FromMetersPerSecond(3),
                Gravity = Gravity.Standard,
            },
        };
        FlightRun run = plan.Fly(new FlightOptions { Scope = FlightScope.AllBodies });
        Console.WriteLine(run);
        #endregion
        Assert.Equal(2, run.Bodies.Length);
        Assert.NotNull(run.Apogee);
    }

    [Fact]
    public void A_timer()
    {
        FlightPlan plan = TestFlights.TwoStages();
        #region light-by-timer
        var timer = new StageIgnition.ByElectronics
        {
            From = TimerStart.BurnoutBelow,
            Timer = Duration.FromSeconds(0.5),
            IgniterLag = Duration.FromMilliseconds(100),
            Guards = new ElectronicsGuards { MinSpeed = Speed.FromMetersPerSecond(20), MaxTilt = Angle.FromDegrees(20) },
        };
        FlightRun run = (plan with { Stages = [plan.Stages[0], plan.Stages[1] with { Ignition = timer }] }).Fly();
        StagingReport report = run.Stagings[0];
        Console.WriteLine($"{(report.Lit ? "lit" : "stays cold")}: {report.Reason}");
        #endregion
        Assert.True(report.Lit, report.Reason);
    }

    [Fact]
    public void A_gap_of_ones_own()
    {
        FlightPlan plan = TestFlights.TwoStages();
        #region gap-of-ones-own
        var own = new StageIgnition.ByGap { Gap = new LightsAbove(Speed.FromMetersPerSecond(10)) };
        FlightRun run = (plan with { Stages = [plan.Stages[0], plan.Stages[1] with { Ignition = own }] }).Fly();
        #endregion
        Assert.True(run.Stagings[0].Lit);
    }

    #region gap-of-ones-own
    private sealed record LightsAbove(Speed Slowest) : IGapIgnition // a record: plans compare by value
    {
        public GapIgnitionResult Ignite(BurnThroughState state, CancellationToken cancellationToken = default) =>
            state.Speed > Slowest
                ? GapIgnitionResult.Lit(Duration.FromMilliseconds(15), separationLag: Duration.FromMilliseconds(25), "as tested")
                : GapIgnitionResult.NotLit(separationLag: null, "too slow, as tested");
    }
    #endregion
}
