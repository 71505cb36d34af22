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
        Piece("parachute", RecoveryKind.Parachute, "A parachute.", f =>
        {
            var area = f.Required("dragArea", Quantities.Area, x => x.DragArea, "Drag coefficient times canopy area.");
            var deployment = f.Required("deployment", Deployment, x => x.Deployment!, "What brings it out.");
            return v => Flight.Recovery.Parachute(area[v], deployment[v]);
        }),
        Piece("streamer", RecoveryKind.Streamer, "A streamer.", f =>
        {
            var area = f.Required("dragArea", Quantities.Area, x => x.DragArea, "Drag coefficient times streamer area.");
            var deployment = f.Required("deployment", Deployment, x => x.Deployment!, "What brings it out.");
            return v => Flight.Recovery.Streamer(area[v], deployment[v]);
        }),
        Piece("tumbling", RecoveryKind.Tumbling, "A body that turns end over end.", f =>
        {
            var area = f.Required("dragArea", Quantities.Area, x => x.DragArea, "Drag coefficient times area while tumbling.");
            var deployment = f.Required("deployment", Deployment, x => x.Deployment!, "What sets it tumbling.");
            return v => Flight.Recovery.Tumbling(area[v], deployment[v]);
        }),
        Piece("ballistic", RecoveryKind.Ballistic, "Nothing slows it but its own drag.", f => v => Flight.Recovery.Ballistic),
    ]);

    private static UnionCase<DeploymentTrigger, DeploymentTrigger> Trigger(string kind, DeploymentEvent on, string description,
        Func<FieldList<DeploymentTrigger>, Func<FieldValues, DeploymentTrigger>> layout) =>
        new(kind, new(kind, description, layout), x => x.On == on);

    private static UnionCase<Recovery, Recovery> Piece(string kind, RecoveryKind which, string description,
        Func<FieldList<Recovery>, Func<FieldValues, Recovery>> layout) =>
        new(kind, new(kind, description, layout), x => x.Kind == which);
}
