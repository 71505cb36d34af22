using Staging.Core;
using Staging.Core.Discharge;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Reviews;
using UnitsNet;

namespace GapStagedFlight;

/// <summary>The demo plan: an invented small two-stage model. It stands for nothing real.</summary>
internal static class DemoPlan
{
    public static StagingPlan Make(string folder) => new()
    {
        Name = "invented two-stage demo, 18 mm motors, gap of 120 mm",
        SiteSize = Length.FromMeters(400),
        Flight = new FlightPlan
        {
            Stages = [Booster(folder), Sustainer(folder)],
            Guide = LaunchGuide.Vertical(Length.FromMeters(1)),
            Site = new LaunchSite { Atmosphere = StandardAtmosphere.Us1976, Elevation = Length.FromMeters(100), Wind = Speed.FromMetersPerSecond(3) },
        },
    };

    private static DragTable Drag(double low) => DragTable.FromColumns(
        Area.FromSquareMillimeters(478), [0, 0.6, 0.9, 1.1], [low, low, 1.25 * low, 1.8 * low]);

    private static Stage Booster(string folder) => new()
    {
        Name = "booster",
        StructureMass = Mass.FromGrams(20),
        Motor = Motor("invented booster motor", Path.Combine(folder, "booster-motor.csv"), new MotorForwardEnd.BurnsThrough(), 10.6),
        MotorCount = 1,
        Drag = Drag(0.60),
        Recovery = new Recovery.Tumbling
        {
            DragArea = Area.FromSquareMillimeters(3600),
            Deployment = new DeploymentTrigger.AtSeparation { Lag = Duration.FromMilliseconds(100) },
        },
        Ignition = new StageIgnition.AtLaunch(),
    };

    private static Stage Sustainer(string folder) => new()
    {
        Name = "sustainer",
        StructureMass = Mass.FromGrams(38),
        Motor = Motor("invented sustainer motor", Path.Combine(folder, "sustainer-motor.csv"), new MotorForwardEnd.Ejects { Delay = Duration.FromSeconds(5) }, 10.5),
        MotorCount = 1,
        Drag = Drag(0.52),
        Recovery = Recovery.Parachute.Round(Length.FromMillimeters(220), 0.75, new DeploymentTrigger.ByMotorDelay()),
        Ignition = new StageIgnition.ByGap { Gap = Gap() },
    };

    private static Motor Motor(string name, string csv, MotorForwardEnd end, double propellant)
    {
        using StreamReader reader = File.OpenText(csv);
        return new Motor
        {
            Name = name,
            Thrust = ThrustCurve.FromCsv(reader),
            PropellantMass = Mass.FromGrams(propellant),
            LoadedMass = Mass.FromGrams(propellant + 10),
            ForwardEnd = end,
            Diameter = Length.FromMillimeters(18),
            Length = Length.FromMillimeters(70),
            Provenance = new Provenance { Source = "Invented; about 820 m/s of exhaust speed, the order of small black-powder motors", How = Evidence.Invented },
        };
    }

    private static GapIgnition Gap()
    {
        GapDesign design = StartingGaps.Bore18mm.Design;
        var holes = new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
        return new GapIgnition
        {
            Design = design with { Vents = [Vent.BelowNozzle(design.Tube, holes, Length.FromMillimeters(1))] },
            Layout = new VentLayout { HoleCount = 4, WallThickness = Length.FromMillimeters(0.5), Land = Length.FromMillimeters(1), Drills = DrillSeries.MetricHalves },
            HolePressureCoefficient = -0.05,
        };
    }
}
