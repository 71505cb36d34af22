using Staging.Core.Flight;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Validation;

/// <summary>
/// An invented two-stage model on invented motors: 28 thrust-curve pieces, a 12-point drag table, a rod, contact staging with a lag,
/// a delay and a canopy. It stands for nothing real.
/// </summary>
internal static class FlightTwoStage
{
    private static readonly Provenance Invented = new() { Source = "Invented for this test", How = Evidence.Invented };

    private static readonly DragTable Drag = DragTable.FromColumns(
        Area.FromSquareMeters(Math.PI / 4 * 0.025 * 0.025),
        [0, 0.30, 0.60, 0.80, 0.90, 0.95, 1.00, 1.05, 1.10, 1.30, 1.60, 2.50],
        [0.42, 0.40, 0.41, 0.45, 0.52, 0.60, 0.70, 0.76, 0.78, 0.74, 0.66, 0.55]);

    public static ThrustHistory BoosterCurve { get; } = ThrustHistory.FromColumns(
        [0.00, 0.02, 0.05, 0.09, 0.13, 0.17, 0.22, 0.28, 0.36, 0.46, 0.58, 0.70, 0.80, 0.85],
        [0.0, 2.5, 8.0, 17.0, 24.0, 21.0, 14.0, 9.5, 9.2, 8.5, 8.3, 8.1, 6.5, 0.0]);

    public static ThrustHistory SustainerCurve { get; } = ThrustHistory.FromColumns(
        [0.00, 0.03, 0.08, 0.14, 0.20, 0.27, 0.36, 0.48, 0.66, 0.90, 1.15, 1.40, 1.62, 1.70],
        [0.0, 3.0, 9.0, 14.5, 12.0, 8.0, 6.0, 5.6, 5.65, 5.4, 5.4, 5.3, 4.8, 0.0]);

    /// <summary>The uppermost stage alone, no tracks, at equal relative and absolute tolerance: in metres and metres a second, whose natural scale is 100.</summary>
    public static FlightOptions Lean(double tolerance) => new()
    {
        Scope = FlightScope.UppermostStage,
        KeepTracks = false,
        Solver = new() { RelativeTolerance = tolerance, ScaledAbsoluteTolerance = tolerance / 100 },
    };

    /// <summary>The plan; the dispersed cases of the peers change the mass at the start and the thrust.</summary>
    public static FlightPlan Plan(double startMass = 0.120, double thrustFactor = 1) => new()
    {
        Stages =
        [
            new Stage
            {
                Name = "booster",
                StructureMass = Mass.FromKilograms(0.023),
                Motor = Motor("booster motor", BoosterCurve.Scaled(thrustFactor), 0.010, 0.022, new MotorForwardEnd.BurnsThrough()),
                MotorCount = 1,
                Drag = Drag,
                Recovery = Recovery.Tumbling(Area.FromSquareMeters(0.002), DeploymentTrigger.AtSeparation(Duration.FromSeconds(0))),
                Ignition = new StageIgnition.AtLaunch(),
            },
            new Stage
            {
                Name = "sustainer",
                StructureMass = Mass.FromKilograms(startMass - 0.045 - 0.024),
                Motor = Motor("sustainer motor", SustainerCurve.Scaled(thrustFactor), 0.012, 0.024, new MotorForwardEnd.Ejects { Delay = Duration.FromSeconds(5) }),
                MotorCount = 1,
                Drag = Drag,
                Recovery = Recovery.Parachute(Area.FromSquareMeters(0.05), DeploymentTrigger.ByMotorDelay),
                Ignition = new StageIgnition.ByContact { Lag = Duration.FromSeconds(0.02) },
            },
        ],
        Guide = LaunchGuide.Vertical(Length.FromMeters(1)),
        Site = new LaunchSite { Atmosphere = StandardAtmosphere.Us1976, Elevation = Length.FromMeters(0), Wind = Speed.FromMetersPerSecond(3) },
    };

    private static Motor Motor(string name, ThrustHistory curve, double propellant, double loaded, MotorForwardEnd end) => new()
    {
        Name = name,
        Thrust = curve,
        PropellantMass = Mass.FromKilograms(propellant),
        LoadedMass = Mass.FromKilograms(loaded),
        ForwardEnd = end,
        Diameter = Length.FromMillimeters(18),
        Length = Length.FromMillimeters(70),
        Provenance = Invented,
    };
}
