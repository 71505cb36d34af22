using System.Collections.Immutable;

namespace Staging.Core.Flight;

/// <summary>From quantities to SI numbers: the only place in this namespace where a plan loses its units.</summary>
internal static class FlightToSi
{
    /// <summary>Elevation of a guide that does not lean [deg].</summary>
    public const double StraightUp = 90;

    public static PlanParameters ToSi(FlightPlan plan)
    {
        double degrees = plan.Guide.Elevation.Degrees;
        bool straightUp = degrees == StraightUp;
        double elevation = degrees * Math.PI / 180;
        var stages = new StageParameters[plan.Stages.Length];
        for (int i = 0; i < stages.Length; i++)
            stages[i] = ToSi(plan.Stages[i], i == stages.Length - 1 ? plan.Payload.Kilograms : 0);
        return new PlanParameters
        {
            Stages = stages,
            Site = ToSi(plan.Site),
            GuideLength = plan.Guide.Length.Meters,
            Elevation = elevation,
            SinElevation = straightUp ? 1 : Math.Sin(elevation),
            CosElevation = straightUp ? 0 : Math.Cos(elevation),
            FrictionCoefficient = plan.Guide.FrictionCoefficient,
            ConstantFriction = plan.Guide.ConstantFriction.Newtons,
            Wind = plan.Site.Wind.MetersPerSecond,
        };
    }

    private static SiteColumn ToSi(LaunchSite site) => new(
        site.Atmosphere, site.Elevation.Meters, site.Gravity.AtSeaLevel.MetersPerSecondSquared,
        site.Gravity.Radius?.Meters ?? double.PositiveInfinity);

    private static StageParameters ToSi(Stage stage, double payload)
    {
        Motor motor = stage.Motor;
        double burntMass = stage.StructureMass.Kilograms + payload;
        ImmutableArray<MotorGroup> all = stage.AllMotors;
        var groups = new MotorParameters[all.Length];
        for (int i = 0; i < groups.Length; i++)
        {
            double propellant = all[i].Motor.PropellantMass.Kilograms;
            groups[i] = new MotorParameters(all[i].Motor.Thrust, propellant, all[i].Count);
            burntMass += all[i].Count * (all[i].Motor.LoadedMass.Kilograms - propellant);
        }

        DragCurve drag = ToSi(stage.Drag);
        DeploymentTrigger? deployment = stage.Recovery.Deployment;
        return new StageParameters
        {
            Name = stage.Name,
            BurntMass = burntMass,
            Burn = new MotorBurn(groups),
            MotorEnd = motor.Thrust.BurnTime.Seconds,
            BurnThrough = motor.ForwardEnd is MotorForwardEnd.BurnsThrough x
                ? x.After?.Seconds ?? motor.Thrust.BurnTime.Seconds
                : double.NaN,
            Delay = motor.ForwardEnd is MotorForwardEnd.Ejects e ? e.Delay.Seconds : double.NaN,
            Drag = drag,
            DragWhileBurning = stage.DragWhileBurning is { } burning ? ToSi(burning) : drag,
            DragDropped = stage.DragWhenDropped is { } dropped ? ToSi(dropped) : drag,
            DeviceArea = stage.Recovery.DragArea.SquareMeters,
            Deployment = deployment?.On,
            DeploymentLag = deployment?.Lag.Seconds ?? 0,
            Ignition = ToSi(stage.Ignition),
        };
    }

    private static DragCurve ToSi(DragTable table) => new(table.ReferenceArea.SquareMeters, table.Mach.Span, table.Coefficient.Span);

    private static IgnitionParameters ToSi(StageIgnition ignition) => ignition switch
    {
        StageIgnition.ByContact x => new IgnitionParameters { Case = ignition, Lag = x.Lag.Seconds },
        StageIgnition.ByElectronics x => new IgnitionParameters
        {
            Case = ignition,
            Timer = x.Timer.Seconds,
            IgniterLag = x.IgniterLag.Seconds,
            SeparationLag = x.SeparationAfterBurnout?.Seconds ?? double.NaN,
            MinSpeed = x.Guards.MinSpeed?.MetersPerSecond ?? double.NegativeInfinity,
            MinHeight = x.Guards.MinHeight?.Meters ?? double.NegativeInfinity,
            MaxHeight = x.Guards.MaxHeight?.Meters ?? double.PositiveInfinity,
            Earliest = x.Guards.Earliest?.Seconds ?? double.NegativeInfinity,
            Latest = x.Guards.Latest?.Seconds ?? double.PositiveInfinity,
            MaxTilt = x.Guards.MaxTilt?.Radians ?? double.PositiveInfinity,
        },
        _ => new IgnitionParameters { Case = ignition },
    };
}
