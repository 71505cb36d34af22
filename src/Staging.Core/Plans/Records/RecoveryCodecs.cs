using Staging.Core.Flight;
using Staging.Core.Plans.Codecs;

namespace Staging.Core.Plans.Records;

/// <summary>How pieces come down.</summary>
internal static class RecoveryCodecs
{
    public static readonly UnionCodec<DeploymentTrigger> Deployment = new("deployment", "When a recovery device comes out.",
    [
        Trigger("atSeparation", DeploymentEvent.Separation, "Parting from the stage above releases it.", f =>
        {
            var lag = f.Required("lag", Quantities.Duration, x => x.Lag, "Time from separation until the device acts.");
            return v => DeploymentTrigger.AtSeparation(lag[v]);
        }),
        Trigger("byMotorDelay", DeploymentEvent.MotorDelay, "The ejection charge of the stage's own motor.",
            f => v => DeploymentTrigger.ByMotorDelay),
        Trigger("atApogee", DeploymentEvent.Apogee, "Electronics that sense apogee.", f =>
        {
            var lag = f.Required("lag", Quantities.Duration, x => x.Lag, "Time from apogee until the device acts.");
            return v => DeploymentTrigger.AtApogee(lag[v]);
        }),
    ]);

    public static readonly UnionCodec<Recovery> Recovery = new("recovery", "How a piece comes down.",
    [
        new UnionCase<Recovery, Recovery.Parachute>("parachute", new("parachute", "A parachute.", f =>
        {
            var area = f.Required("dragArea", Quantities.Area, x => x.DragArea, "Drag coefficient times canopy area.");
            var deployment = f.Required("deployment", Deployment, x => x.Deployment, "What brings it out.");
            return v => new Recovery.Parachute { DragArea = area[v], Deployment = deployment[v] };
        })),
        new UnionCase<Recovery, Recovery.Streamer>("streamer", new("streamer", "A streamer.", f =>
        {
            var area = f.Required("dragArea", Quantities.Area, x => x.DragArea, "Drag coefficient times streamer area.");
            var deployment = f.Required("deployment", Deployment, x => x.Deployment, "What brings it out.");
            return v => new Recovery.Streamer { DragArea = area[v], Deployment = deployment[v] };
        })),
        new UnionCase<Recovery, Recovery.Tumbling>("tumbling", new("tumbling", "A body that turns end over end.", f =>
        {
            var area = f.Required("dragArea", Quantities.Area, x => x.DragArea, "Drag coefficient times area while tumbling.");
            var deployment = f.Required("deployment", Deployment, x => x.Deployment, "What sets it tumbling.");
            return v => new Recovery.Tumbling { DragArea = area[v], Deployment = deployment[v] };
        })),
        new UnionCase<Recovery, Recovery.Ballistic>("ballistic",
            new("ballistic", "Nothing slows it but its own drag.", f => v => new Recovery.Ballistic())),
    ]);

    private static UnionCase<DeploymentTrigger, DeploymentTrigger> Trigger(string kind, DeploymentEvent on, string description,
        Func<FieldList<DeploymentTrigger>, Func<FieldValues, DeploymentTrigger>> layout) =>
        new(kind, new(kind, description, layout), x => x.On == on);
}
