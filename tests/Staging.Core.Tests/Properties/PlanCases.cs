using FsCheck;
using FsCheck.Fluent;
using Staging.Core.Flight;
using Staging.Core.Gases;
using Staging.Core.Plans;
using UnitsNet;
using static Staging.Core.Tests.Properties.QuantityCases;

namespace Staging.Core.Tests.Properties;

/// <summary>
/// Random plans in which every value is legal on its own: every case of every union, every optional key there or not, every unit. They need
/// not hang together, and stand for nothing real.
/// </summary>
public static class PlanCases
{
    private static readonly Gen<ElectronicsGuards> Guards =
        from all in Gen.Elements(true, false)
        from speed in Number(0, 5000)
        from height in Lengths(0, 200_000)
        from time in Durations(0, 1000)
        from tilt in Gen.Elements(Angle.FromDegrees(30), Angle.FromRadians(0.5))
        select all
            ? new ElectronicsGuards { MinSpeed = Speed.FromMetersPerSecond(speed), MinHeight = height, MaxHeight = height, Earliest = time, Latest = time, MaxTilt = tilt }
            : ElectronicsGuards.None;

    private static readonly Gen<StageIgnition> Ignitions = Gen.OneOf(
        Gen.Constant<StageIgnition>(new StageIgnition.AtLaunch()),
        Durations(0, 10).Select(t => (StageIgnition)new StageIgnition.ByContact { Lag = t }),
        GapCases.Gaps.Select(g => (StageIgnition)new StageIgnition.ByGap { Gap = g }),
        from start in Gen.Elements(Enum.GetValues<TimerStart>())
        from timer in Durations(0, 1000)
        from lag in Durations(0, 10)
        from guards in Guards
        from separation in Gen.OneOf(
            Durations(0, 1000).Select(t => (Duration?)t),
            Gen.Constant<Duration?>(null))
        select (StageIgnition)new StageIgnition.ByElectronics { From = start, Timer = timer, IgniterLag = lag, Guards = guards, SeparationAfterBurnout = separation });

    private static readonly Gen<DeploymentTrigger> Triggers = Gen.OneOf(
        Durations(0, 100).Select(t => DeploymentTrigger.AtSeparation(t)),
        Gen.Constant<DeploymentTrigger>(DeploymentTrigger.ByMotorDelay),
        Durations(0, 100).Select(t => DeploymentTrigger.AtApogee(t)));

    private static readonly Gen<Recovery> Recoveries =
        from area in Areas(1e-4, 100)
        from trigger in Triggers
        from recovery in Gen.Elements<Recovery>(
            Recovery.Parachute(area, trigger),
            Recovery.Streamer(area, trigger),
            Recovery.Tumbling(area, trigger),
            Recovery.Ballistic)
        select recovery;

    private static readonly Gen<DragTable> Drags =
        from area in Areas(0, 1000)
        from machs in Number(0.01, 5).ListOf(4)
        from coefficient in Number(0, 100)
        select DragTable.FromColumns(area, [0, .. machs.Order().Select((m, i) => m + i)], [coefficient, .. machs]);

    private static readonly Gen<ThrustHistory> Curves =
        from steps in Number(1e-3, 10).ListOf(5)
        from peak in Number(1, 1e7)
        let times = steps.Select((_, i) => steps.Take(i + 1).Sum()).ToArray()
        select ThrustHistory.FromColumns([0, .. times, 999], [peak, .. times, 0]);

    private static readonly Gen<MotorForwardEnd> Ends = Gen.OneOf(
        Durations(1e-3, 1000).Select(t => (MotorForwardEnd)new MotorForwardEnd.BurnsThrough { After = t }),
        Gen.Constant<MotorForwardEnd>(new MotorForwardEnd.BurnsThrough()),
        Durations(0, 100).Select(t => (MotorForwardEnd)new MotorForwardEnd.Ejects { Delay = t }),
        Gen.Constant<MotorForwardEnd>(new MotorForwardEnd.Plugged()));

    private static readonly Gen<Motor> Motors =
        from name in Names
        from curve in Curves
        from propellant in Masses(0, 10_000)
        from loaded in Masses(0, 20_000)
        from end in Ends
        from diameter in Lengths(1e-3, 2)
        from length in Lengths(1e-3, 20)
        from source in Sources
        select new Motor { Name = name, Thrust = curve, PropellantMass = propellant, LoadedMass = loaded, ForwardEnd = end, Diameter = diameter, Length = length, Provenance = source };

    private static readonly Gen<Stage> Stages =
        from name in Names
        from mass in Masses(0, 100_000)
        from motor in Motors
        from count in Gen.Choose(1, 100)
        from drag in Drags
        from burning in Gen.Elements<DragTable?>(null, drag)
        from dropped in Gen.OneOf(Gen.Constant<DragTable?>(null), Drags.Select(d => (DragTable?)d))
        from recovery in Recoveries
        from ignition in Ignitions
        select new Stage
        {
            Name = name,
            StructureMass = mass,
            Motor = motor,
            MotorCount = count,
            Drag = drag,
            DragWhileBurning = burning,
            DragWhenDropped = dropped,
            Recovery = recovery,
            Ignition = ignition,
        };

    private static readonly Gen<IAtmosphere> Atmospheres = Gen.OneOf(
        Gen.Constant<IAtmosphere>(StandardAtmosphere.Us1976),
        from elevation in Lengths(-430, 6000)
        from pressure in Pressures(40e3, 110e3)
        from temperature in Temperatures(220, 330)
        from humidity in Number(0, 1)
        select (IAtmosphere)new SiteAtmosphere(new SiteConditions { Elevation = elevation, Pressure = pressure, Temperature = temperature, RelativeHumidity = humidity }),
        from pressure in Pressures(0, 1e6)
        from temperature in Temperatures(1, 1000)
        select (IAtmosphere)new UniformAtmosphere { Pressure = pressure, Temperature = temperature, Density = Density.FromKilogramsPerCubicMeter(1.2), SoundSpeed = Speed.FromFeetPerSecond(1100) });

    private static readonly Gen<LaunchSite> Sites =
        from atmosphere in Atmospheres
        from elevation in Lengths(-500, 9000)
        from wind in Gen.Elements(Speed.FromMetersPerSecond(3), Speed.FromKilometersPerHour(10), Speed.Zero)
        from gravity in Gen.Elements(
            Gravity.Standard,
            new Gravity { AtSeaLevel = Acceleration.FromMetersPerSecondSquared(9.81), Radius = null },
            new Gravity { AtSeaLevel = Acceleration.FromMetersPerSecondSquared(9.78), Radius = Length.FromKilometers(6378) })
        select new LaunchSite { Atmosphere = atmosphere, Elevation = elevation, Wind = wind, Gravity = gravity };

    /// <summary>Whole plans of one to three stages.</summary>
    public static Arbitrary<StagingPlan> Plans() =>
        (from name in Names
         from size in Lengths(1, 100_000)
         from count in Gen.Choose(1, 3)
         from stages in Stages.ListOf(count)
         from payload in Gen.OneOf(Gen.Constant(default(Mass)), Masses(0, 100_000))
         from travel in Lengths(0.01, 100)
         from lean in Number(30, 90)
         from friction in Number(0, 2)
         from site in Sites
         select new StagingPlan
         {
             Name = name,
             SiteSize = size,
             Flight = new FlightPlan
             {
                 Stages = [.. stages],
                 Payload = payload,
                 Guide = new LaunchGuide { Length = travel, Elevation = Angle.FromDegrees(lean), FrictionCoefficient = friction, ConstantFriction = Force.FromNewtons(1) },
                 Site = site,
             },
         }).ToArbitrary();
}
