using Staging.Core.Flight;
using Staging.Core.Reviews;

namespace Staging.Core.Plans.Forms;

/// <summary>A stage, its motor, its ignition and its way down.</summary>
internal static class StageForms
{
    private static readonly UnionForm<MotorForwardEnd> ForwardEnd = new("a forward end",
    [
        new UnionCase<MotorForwardEnd, MotorForwardEnd.BurnsThrough>("burnsThrough", new("burn-through forward end", k =>
        {
            var after = k.MayNumber("after", Quantities.Duration, x => x.After);
            return v => new MotorForwardEnd.BurnsThrough { After = after(v) };
        })),
        new UnionCase<MotorForwardEnd, MotorForwardEnd.Ejects>("ejects", new("ejecting forward end", k =>
        {
            var delay = k.Needs("delay", Quantities.Duration, x => x.Delay);
            return v => new MotorForwardEnd.Ejects { Delay = delay(v) };
        })),
        new UnionCase<MotorForwardEnd, MotorForwardEnd.Plugged>("plugged", new("plugged forward end", _ => _ => new MotorForwardEnd.Plugged())),
    ]);

    private static readonly RecordForm<Motor> Motor = new("motor", k =>
    {
        var name = k.Needs("name", TextForm.NotBlank, x => x.Name);
        var thrust = k.Needs("thrust", ThrustForm.Curve, x => x.Thrust);
        var propellant = k.Needs("propellantMass", Quantities.Mass, x => x.PropellantMass);
        var loaded = k.Needs("loadedMass", Quantities.Mass, x => x.LoadedMass);
        var end = k.Needs("forwardEnd", ForwardEnd, x => x.ForwardEnd);
        var diameter = k.Needs("diameter", Quantities.Length, x => x.Diameter);
        var length = k.Needs("length", Quantities.Length, x => x.Length);
        var provenance = k.Needs("provenance", SharedForms.Provenance, x => x.Provenance);
        return v => new Motor
        {
            Name = name(v), Thrust = thrust(v), PropellantMass = propellant(v), LoadedMass = loaded(v), ForwardEnd = end(v),
            Diameter = diameter(v), Length = length(v), Provenance = provenance(v),
        };
    });

    private static readonly RecordForm<DragTable> Drag = new("drag table", k =>
    {
        var area = k.Needs("referenceArea", Quantities.Area, x => x.ReferenceArea);
        var mach = k.Needs("mach", ColumnForm.Numbers, x => x.Mach);
        var coefficient = k.Needs("coefficient", ColumnForm.Numbers, x => x.Coefficient);
        return v => DragTable.FromColumns(area(v), mach(v).Span, coefficient(v).Span);
    });

    private static readonly UnionForm<DeploymentTrigger> Trigger = new("a deployment trigger",
    [
        new UnionCase<DeploymentTrigger, DeploymentTrigger.AtSeparation>("atSeparation", new("deployment at separation", k =>
        {
            var lag = k.Needs("lag", Quantities.Duration, x => x.Lag);
            return v => new DeploymentTrigger.AtSeparation { Lag = lag(v) };
        })),
        new UnionCase<DeploymentTrigger, DeploymentTrigger.ByMotorDelay>("byMotorDelay", new("deployment by motor delay", _ => _ => new DeploymentTrigger.ByMotorDelay())),
        new UnionCase<DeploymentTrigger, DeploymentTrigger.AtApogee>("atApogee", new("deployment at apogee", k =>
        {
            var lag = k.Needs("lag", Quantities.Duration, x => x.Lag);
            return v => new DeploymentTrigger.AtApogee { Lag = lag(v) };
        })),
    ]);

    private static readonly UnionForm<Recovery> Recovery = new("a recovery",
    [
        new UnionCase<Recovery, Recovery.Parachute>("parachute", new("parachute", k =>
        {
            var area = k.Needs("dragArea", Quantities.Area, x => x.DragArea);
            var deployment = k.Needs("deployment", Trigger, x => x.Deployment);
            return v => new Recovery.Parachute { DragArea = area(v), Deployment = deployment(v) };
        })),
        new UnionCase<Recovery, Recovery.Streamer>("streamer", new("streamer", k =>
        {
            var area = k.Needs("dragArea", Quantities.Area, x => x.DragArea);
            var deployment = k.Needs("deployment", Trigger, x => x.Deployment);
            return v => new Recovery.Streamer { DragArea = area(v), Deployment = deployment(v) };
        })),
        new UnionCase<Recovery, Recovery.Tumbling>("tumbling", new("tumbling descent", k =>
        {
            var area = k.Needs("dragArea", Quantities.Area, x => x.DragArea);
            var deployment = k.Needs("deployment", Trigger, x => x.Deployment);
            return v => new Recovery.Tumbling { DragArea = area(v), Deployment = deployment(v) };
        })),
        new UnionCase<Recovery, Recovery.Ballistic>("ballistic", new("ballistic descent", _ => _ => new Recovery.Ballistic())),
    ]);

    private static readonly RecordForm<ElectronicsGuards> Guards = new("electronics guards", k =>
    {
        var speed = k.MayNumber("leastSpeed", Quantities.Speed, x => x.LeastSpeed);
        var least = k.MayNumber("leastHeight", Quantities.Length, x => x.LeastHeight);
        var greatest = k.MayNumber("greatestHeight", Quantities.Length, x => x.GreatestHeight);
        var earliest = k.MayNumber("earliest", Quantities.Duration, x => x.Earliest);
        var latest = k.MayNumber("latest", Quantities.Duration, x => x.Latest);
        var tilt = k.MayNumber("greatestTilt", Quantities.Angle, x => x.GreatestTilt);
        return v => new ElectronicsGuards
        {
            LeastSpeed = speed(v), LeastHeight = least(v), GreatestHeight = greatest(v), Earliest = earliest(v), Latest = latest(v), GreatestTilt = tilt(v),
        };
    });

    private static readonly UnionForm<SeparationRule> Separation = new("a separation rule",
    [
        new UnionCase<SeparationRule, SeparationRule.AfterBurnout>("afterBurnout", new("separation after burnout", k =>
        {
            var lag = k.Needs("lag", Quantities.Duration, x => x.Lag);
            return v => new SeparationRule.AfterBurnout { Lag = lag(v) };
        })),
        new UnionCase<SeparationRule, SeparationRule.AtIgnition>("atIgnition", new("separation at ignition", _ => _ => new SeparationRule.AtIgnition())),
    ]);

    private static readonly UnionForm<StageIgnition> Ignition = new("an ignition",
    [
        new UnionCase<StageIgnition, StageIgnition.AtLaunch>("atLaunch", new("ignition at launch", _ => _ => new StageIgnition.AtLaunch())),
        new UnionCase<StageIgnition, StageIgnition.ByContact>("byContact", new("ignition by contact", k =>
        {
            var lag = k.Needs("lag", Quantities.Duration, x => x.Lag);
            return v => new StageIgnition.ByContact { Lag = lag(v) };
        })),
        new UnionCase<StageIgnition, StageIgnition.ByGap>("byGap", new("ignition by gap", k =>
        {
            var gap = k.Needs("gap", new AsForm<IGapIgnition, GapIgnition>(GapForms.Gap), x => x.Gap);
            return v => new StageIgnition.ByGap { Gap = gap(v) };
        })),
        new UnionCase<StageIgnition, StageIgnition.ByElectronics>("byElectronics", new("ignition by electronics", k =>
        {
            var from = k.Needs("from", ChoiceForm<TimerStart>.Words, x => x.From);
            var timer = k.Needs("timer", Quantities.Duration, x => x.Timer);
            var lag = k.Needs("igniterLag", Quantities.Duration, x => x.IgniterLag);
            var guards = k.Needs("guards", Guards, x => x.Guards);
            var separation = k.Needs("separation", Separation, x => x.Separation);
            return v => new StageIgnition.ByElectronics
            {
                From = from(v), Timer = timer(v), IgniterLag = lag(v), Guards = guards(v), Separation = separation(v),
            };
        })),
    ]);

    /// <summary>A stage with all its parts.</summary>
    public static RecordForm<Stage> Stage { get; } = new("stage", k =>
    {
        var name = k.Needs("name", TextForm.NotBlank, x => x.Name);
        var structure = k.Needs("structureMass", Quantities.Mass, x => x.StructureMass);
        var motor = k.Needs("motor", Motor, x => x.Motor);
        var count = k.Needs("motorCount", CountForm.Whole, x => x.MotorCount);
        var drag = k.Needs("drag", Drag, x => x.Drag);
        var burning = k.May("dragWhileBurning", Drag, x => x.DragWhileBurning);
        var dropped = k.May("dragWhenDropped", Drag, x => x.DragWhenDropped);
        var recovery = k.Needs("recovery", Recovery, x => x.Recovery);
        var ignition = k.Needs("ignition", Ignition, x => x.Ignition);
        return v => new Stage
        {
            Name = name(v), StructureMass = structure(v), Motor = motor(v), MotorCount = count(v), Drag = drag(v), DragWhileBurning = burning(v),
            DragWhenDropped = dropped(v), Recovery = recovery(v), Ignition = ignition(v),
        };
    });
}
