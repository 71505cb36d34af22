using Staging.Core.Flight;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Campaign.Drawing;

/// <summary>Stacks of one to four stages, their motors and their site; how a stage is lit through a gap is told from outside.</summary>
internal static class FlightDraws
{
    /// <summary>A flight.</summary>
    /// <param name="d">Its values.</param>
    /// <param name="fewest">How many stages there are at least.</param>
    /// <param name="gap">What lights a stage through a gap, by its number from 2; null where none is lit so.</param>
    public static FlightPlan Plan(Draws d, int fewest, Func<int, StageIgnition?> gap)
    {
        double elevation = d.Number("site.elevation", new(200, 0, 2500, -500, 9000));
        int stages = Math.Max(fewest, d.Choice("stages", 5) switch { 1 => 1, 2 => 3, 3 => 4, _ => 2 });
        return new FlightPlan
        {
            Stages = [.. Enumerable.Range(1, stages).Select(k => Stage(d, k, stages, gap))],
            Payload = Mass.FromKilograms(d.Number("payload", new(0, 0, 0.2, 0, 100_000))),
            Guide = new LaunchGuide
            {
                Length = Length.FromMeters(d.Number("guide.length", new(1, 0.5, 3, 0.01, 100))),
                Elevation = Angle.FromDegrees(d.Number("guide.elevation", new(90, 70, 90, 30, 90))),
                FrictionCoefficient = d.Number("guide.friction", new(0, 0, 0.3, 0, 2)),
                ConstantFriction = Force.FromNewtons(d.Number("guide.force", new(0, 0, 0.5, 0, 1000))),
            },
            Site = new LaunchSite
            {
                Atmosphere = Atmosphere(d, elevation),
                Elevation = Length.FromMeters(elevation),
                Wind = Speed.FromMetersPerSecond(d.Number("site.wind", new(3, 0, 9, 0, 50))),
                Gravity = Gravitation(d),
            },
        };
    }

    private static Gravity Gravitation(Draws d)
    {
        var sea = Acceleration.FromMetersPerSecondSquared(d.Number("site.g", new(9.81, 9.78, 9.83, 0.1, 30)));
        return d.Choice("site.gravity", 6) switch
        {
            1 => new Gravity { AtSeaLevel = sea, Radius = null },
            2 => new Gravity { AtSeaLevel = sea, Radius = Length.FromMeters(d.Number("site.radius", new(6.4e6, 6.3e6, 6.5e6, 1e6, 1e8))) },
            _ => Gravity.Standard,
        };
    }

    private static Stage Stage(Draws d, int k, int stages, Func<int, StageIgnition?> gap)
    {
        string at = $"stage{k}.";
        StageIgnition ignition = k == 1 ? new StageIgnition.AtLaunch() : gap(k) ?? Ignition(d, at);
        Motor motor = MotorDraws.Motor(d, at + "motor.", k < stages);
        bool delayed = motor.ForwardEnd is MotorForwardEnd.Ejects;
        DragTable drag = Drag(d, at);
        return new Stage
        {
            Name = $"stage {k}",
            StructureMass = Mass.FromKilograms(d.Number(at + "structure", new(0.03, 0.015, 0.5, 0, 100_000))),
            Motor = motor,
            MotorCount = d.Choice(at + "clustered", 6) == 1 ? d.Count(at + "motors", new(2, 2, 4, 1, 100)) : 1,
            ParallelMotors = d.Choice(at + "parallel", 10) == 1
                ? [new MotorGroup { Motor = MotorDraws.Motor(d, at + "side.", false).Plugged(), Count = 2 }]
                : [],
            Drag = drag,
            DragWhileBurning = d.Choice(at + "burning-drag", 4) == 1 ? drag.Scaled(0.9) : null,
            DragWhenDropped = d.Choice(at + "dropped-drag", 4) == 1 ? drag.Scaled(1.5) : null,
            Recovery = Recover(d, at, k == stages, delayed),
            Ignition = ignition,
        };
    }

    private static StageIgnition Ignition(Draws d, string at) => d.Choice(at + "lit", 3) < 2
        ? new StageIgnition.ByContact { Lag = Duration.FromSeconds(d.Number(at + "lag", new(0.02, 0, 0.5, 0, 10))) }
        : new StageIgnition.ByElectronics
        {
            From = (TimerStart)d.Choice(at + "timer-from", Enum.GetValues<TimerStart>().Length),
            Timer = Duration.FromSeconds(d.Number(at + "timer", new(1, 0, 4, 0, 1000))),
            IgniterLag = Duration.FromSeconds(d.Number(at + "igniter", new(0.1, 0.02, 0.4, 0, 10))),
            Guards = d.Choice(at + "guarded", 2) == 0 ? ElectronicsGuards.None : new ElectronicsGuards
            {
                MinSpeed = Speed.FromMetersPerSecond(d.Number(at + "min-speed", new(10, 0, 40, 0, 5000))),
                MinHeight = Length.FromMeters(d.Number(at + "min-height", new(20, 0, 100, 0, 200_000))),
                MaxTilt = Angle.FromDegrees(d.Number(at + "max-tilt", new(30, 10, 45, 0, 90))),
            },
            SeparationAfterBurnout = d.Choice(at + "separates", 2) == 0
                ? null
                : Duration.FromSeconds(d.Number(at + "separation", new(0.1, 0, 1, 0, 1000))),
        };

    private static Recovery Recover(Draws d, string at, bool top, bool delayed)
    {
        Duration lag = Duration.FromSeconds(d.Number(at + "recovery-lag", new(0.1, 0, 3, 0, 100)));
        DeploymentTrigger trigger = d.Choice(at + "trigger", 3) switch
        {
            1 => DeploymentTrigger.AtApogee(lag),
            2 when delayed => DeploymentTrigger.ByMotorDelay,
            _ => top ? DeploymentTrigger.AtApogee(lag) : DeploymentTrigger.AtSeparation(lag),
        };
        Area area = Area.FromSquareMeters(d.Number(at + "recovery", new(0.02, 0.002, 0.5, 1e-4, 100)));
        return d.Choice(at + "device", 4) switch
        {
            1 => Recovery.Streamer(area, trigger),
            2 => Recovery.Tumbling(area, trigger),
            3 => Recovery.Ballistic,
            _ => Recovery.Parachute(area, trigger),
        };
    }

    private static DragTable Drag(Draws d, string at)
    {
        Area area = Area.FromSquareMeters(d.Number(at + "area", new(4.9e-4, 2e-4, 2e-3, 0, 1000)));
        double cd = d.Number(at + "cd", new(0.5, 0.3, 1, 0, 100)), rise = d.Number(at + "cd-rise", new(1.5, 1, 2.5, 0, 100));
        double end = d.Number(at + "mach-end", new(2, 1.5, 3, 1.2, 50));
        return DragTable.FromColumns(area, [0, 0.8, 1.1, end], [cd, cd, Math.Min(100, cd * rise), cd]);
    }

    private static IAtmosphere Atmosphere(Draws d, double elevation) => d.Choice("site.air", 4) switch
    {
        1 => new SiteAtmosphere(new SiteConditions
        {
            Elevation = Length.FromMeters(d.Choice("site.air-elsewhere", 12) == 1
                ? d.Number("site.air-elevation", new(200, 0, 2500, -430, 6000))
                : Math.Clamp(elevation, -430, 6000)),
            Pressure = Pressure.FromPascals(d.Number("site.pressure", new(98e3, 75e3, 103e3, 40e3, 110e3))),
            Temperature = Temperature.FromKelvins(d.Number("site.temperature", new(288, 260, 315, 220, 330))),
            RelativeHumidity = d.Number("site.humidity", new(0.5, 0, 1, 0, 1)),
        }),
        2 => new UniformAtmosphere
        {
            Pressure = Pressure.FromPascals(d.Number("site.pressure", new(101325, 80e3, 102e3, 0, 1e6))),
            Temperature = Temperature.FromKelvins(d.Number("site.temperature", new(288, 260, 315, 1, 1000))),
            Density = Density.FromKilogramsPerCubicMeter(d.Number("site.density", new(1.225, 1, 1.3, 0, 100))),
            SoundSpeed = Speed.FromMetersPerSecond(d.Number("site.sound", new(340, 320, 350, 1, 10_000))),
        },
        _ => StandardAtmosphere.Us1976,
    };
}
