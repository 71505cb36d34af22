using Staging.Core.Flight;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Flight;

/// <summary>Invented stacks on invented motors; they stand for nothing real.</summary>
internal static class TestFlights
{
    public static Provenance Invented { get; } = new() { Source = "Invented for this test", How = Evidence.Invented };

    public static ThrustHistory Curve { get; } = ThrustHistory.FromColumns([0, 0.05, 0.15, 0.25, 0.8, 0.85], [0, 6, 20, 9, 8, 0]);

    public static DragTable Drag { get; } = DragTable.FromColumns(
        Area.FromSquareMeters(4.9e-4), [0, 0.6, 0.9, 1.1, 2], [0.45, 0.45, 0.6, 0.85, 0.6]);

    public static Duration Seconds(double value) => Duration.FromSeconds(value);

    public static Motor Motor(MotorForwardEnd end, ThrustHistory? curve = null, double propellant = 0.010) => new()
    {
        Name = "invented motor",
        Thrust = curve ?? Curve,
        PropellantMass = Mass.FromKilograms(propellant),
        LoadedMass = Mass.FromKilograms(propellant + 0.011),
        ForwardEnd = end,
        Diameter = Length.FromMillimeters(18),
        Length = Length.FromMillimeters(70),
        Provenance = Invented,
    };

    public static Stage Booster(string name = "booster", StageIgnition? ignition = null) => new()
    {
        Name = name,
        StructureMass = Mass.FromGrams(22),
        Motor = Motor(new MotorForwardEnd.BurnsThrough()),
        MotorCount = 1,
        Drag = Drag,
        Recovery = Recovery.Tumbling(Area.FromSquareMeters(0.003), DeploymentTrigger.AtSeparation(Seconds(0.1))),
        Ignition = ignition ?? new StageIgnition.AtLaunch(),
    };

    public static Stage Sustainer(StageIgnition ignition) => new()
    {
        Name = "sustainer",
        StructureMass = Mass.FromGrams(40),
        Motor = Motor(new MotorForwardEnd.Ejects { Delay = Seconds(4) }),
        MotorCount = 1,
        Drag = Drag,
        Recovery = Recovery.Parachute(Area.FromSquareMeters(0.06), DeploymentTrigger.ByMotorDelay),
        Ignition = ignition,
    };

    public static StageIgnition Contact(double lag = 0.02) => new StageIgnition.ByContact { Lag = Seconds(lag) };

    public static StageIgnition Gap(Func<BurnThroughState, GapIgnitionResult> answer) => new StageIgnition.ByGap { Gap = new FakeGap(answer) };

    public static StageIgnition Timer(
        double after, ElectronicsGuards? guards = null, Duration? separation = null, TimerStart from = TimerStart.BurnoutBelow) =>
        new StageIgnition.ByElectronics
        {
            From = from,
            Timer = Seconds(after),
            IgniterLag = Seconds(0.1),
            Guards = guards ?? ElectronicsGuards.None,
            SeparationAfterBurnout = separation,
        };

    public static FlightPlan TwoStages(StageIgnition? ignition = null) => Plan(Booster(), Sustainer(ignition ?? Contact()));

    public static FlightPlan Plan(params Stage[] stages) => new()
    {
        Stages = [.. stages],
        Guide = LaunchGuide.Vertical(Length.FromMeters(1)),
        Site = new LaunchSite { Atmosphere = StandardAtmosphere.Us1976, Elevation = Length.FromMeters(200), Wind = Speed.FromMetersPerSecond(4) },
    };

    /// <summary>Flies with the token of the running test.</summary>
    public static FlightRun Flown(this FlightPlan plan, FlightOptions? options = null) =>
        plan.Fly(options, cancellationToken: TestContext.Current.CancellationToken);

    public static FlightOutcome.Landed Landing(this BodyFlight body) => Assert.IsType<FlightOutcome.Landed>(body.Outcome);

    public static FlightEvent The(this BodyFlight body, FlightEventKind kind, string? stage = null)
    {
        FlightEvent? found = body.Find(kind, stage);
        Assert.True(found is not null, $"{body.Name} has no {kind}.");
        return found;
    }

    private sealed record FakeGap(Func<BurnThroughState, GapIgnitionResult> Answer) : IGapIgnition
    {
        public GapIgnitionResult Ignite(BurnThroughState state, CancellationToken cancellationToken = default) => Answer(state);
    }
}
