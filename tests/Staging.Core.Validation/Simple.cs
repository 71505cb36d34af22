using Staging.Core.Flight;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Validation;

/// <summary>Flights whose equation has a closed form: uniform air or none, constant thrust, invented throughout.</summary>
internal static class Simple
{
    private static readonly Provenance Invented = new() { Source = "Invented for this test", How = Evidence.Invented };

    private static readonly StageIgnition Never = new StageIgnition.ByElectronics
    {
        From = TimerStart.BurnoutBelow,
        Timer = Duration.FromSeconds(900),
        IgniterLag = Duration.FromSeconds(0),
        Guards = ElectronicsGuards.None,
        SeparationAfterBurnout = Duration.FromSeconds(0),
    };

    /// <summary>A push of constant mass, after which part of the mass is left behind and the rest coasts.</summary>
    public static FlightPlan Plan(double rho, double Cd, double d, (double Thrust, double Time, double Mass) push, double coastMass)
    {
        DragTable drag = DragTable.Constant(Area.FromSquareMeters(Math.PI / 4 * d * d), Cd);
        return Plan(rho,
            Stage("push", push.Mass, 0, push.Thrust, push.Time, drag, new StageIgnition.AtLaunch()),
            Stage("coast", coastMass, 0, 1, 1, drag, Never));
    }

    /// <summary>Two pushes with a coast between; mass is left behind at the first burnout, at the second ignition and at the second burnout.</summary>
    public static FlightPlan TwoStages(double gap)
    {
        Area area = Area.FromSquareMeters(Math.PI / 4 * .0248 * .0248);
        DragTable stack = DragTable.Constant(area, .6), upper = DragTable.Constant(area, .5);
        var timer = new StageIgnition.ByElectronics
        {
            From = TimerStart.LiftOff,
            Timer = Duration.FromSeconds(.9 + gap),
            IgniterLag = Duration.FromSeconds(0),
            Guards = ElectronicsGuards.None,
        };
        return Plan(1.225,
            Stage("lower", .030, 0, 8, .9, stack, new StageIgnition.AtLaunch()),
            Stage("ring", .005, 0, 1, 1, upper, Never),
            Stage("upper", .007, 0, 6, 1.6, upper, timer),
            Stage("capsule", .048, 0, 1, 1, upper, Never));
    }

    public static FlightPlan Plan(double rho, params Stage[] stages) => new()
    {
        Stages = [.. stages],
        Guide = LaunchGuide.Vertical(Length.FromMeters(1)),
        Site = new LaunchSite
        {
            Atmosphere = Air(rho),
            Elevation = Length.FromMeters(0),
            Wind = Speed.FromMetersPerSecond(0),
            Gravity = new Gravity { AtSeaLevel = Acceleration.FromMetersPerSecondSquared(9.80665), Radius = null },
        },
    };

    /// <summary>A stage with constant thrust; with <paramref name="propellant"/> it burns at a constant rate.</summary>
    public static Stage Stage(
        string name, double burntMass, double propellant, double thrust, double time, DragTable drag, StageIgnition ignition, Recovery? recovery = null) => new()
        {
            Name = name,
            StructureMass = Mass.FromKilograms(burntMass),
            Motor = new Motor
            {
                Name = name + " motor",
                Thrust = ThrustHistory.FromColumns([0, time], [thrust, thrust]),
                PropellantMass = Mass.FromKilograms(propellant),
                LoadedMass = Mass.FromKilograms(propellant),
                ForwardEnd = new MotorForwardEnd.BurnsThrough(),
                Diameter = Length.FromMillimeters(18),
                Length = Length.FromMillimeters(70),
                Provenance = Invented,
            },
            MotorCount = 1,
            Drag = drag,
            Recovery = recovery ?? Recovery.Ballistic,
            Ignition = ignition,
        };

    public static DragTable NoDrag { get; } = DragTable.Constant(Area.FromSquareMeters(1), 0);

    private static UniformAtmosphere Air(double rho) => new()
    {
        Pressure = Pressure.FromPascals(101_325),
        Temperature = Temperature.FromKelvins(288.15),
        Density = Density.FromKilogramsPerCubicMeter(rho),
        SoundSpeed = Speed.FromMetersPerSecond(340),
    };
}
