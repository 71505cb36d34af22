using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The recovery of a body. Once a device acts, its drag area replaces the drag of the body.</summary>
public sealed record Recovery
{
    private Recovery(RecoveryKind kind, Area dragArea, DeploymentTrigger? deployment) =>
        (Kind, DragArea, Deployment) = (kind, dragArea, deployment);

    /// <summary>Only its own drag slows it: it comes down nose first.</summary>
    public static Recovery Ballistic { get; } = new(RecoveryKind.Ballistic, Area.Zero, null);

    /// <summary>The kind of recovery.</summary>
    internal RecoveryKind Kind { get; }

    /// <summary>Drag coefficient times area of the device [m2]; zero without one.</summary>
    internal Area DragArea { get; }

    /// <summary>The trigger that deploys the device; null without one.</summary>
    internal DeploymentTrigger? Deployment { get; }

    /// <summary>A parachute.</summary>
    /// <param name="dragArea">Drag coefficient times canopy area [m2], 1 cm2 to 1000 m2.</param>
    /// <param name="deployment">What brings it out.</param>
    /// <returns>The recovery.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static Recovery Parachute(Area dragArea, DeploymentTrigger deployment) =>
        new(RecoveryKind.Parachute, Guard.In(dragArea, 1e-4, 1000, nameof(dragArea)), Guard.NotNull(deployment, nameof(deployment)));

    /// <summary>A parachute with a flat round canopy.</summary>
    /// <param name="diameter">Diameter laid flat [m], 1 cm to 30 m.</param>
    /// <param name="dragCoefficient">
    /// Coefficient on the laid-flat area [-], 0.1 to 2.5; 0.75 to 0.80 is usual for flat circular canopies (T. W.
    /// Knacke, Parachute Recovery Systems Design Manual, NWC TP 6575, 1991, table 5-1; from memory).
    /// </param>
    /// <param name="deployment">What brings it out.</param>
    /// <returns>The recovery.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static Recovery RoundParachute(Length diameter, double dragCoefficient, DeploymentTrigger deployment)
    {
        double d = Guard.In(diameter, 0.01, 30, nameof(diameter)).Meters;
        double cd = Guard.In(dragCoefficient, 0.1, 2.5, property: nameof(dragCoefficient));
        return Parachute(Area.FromSquareMeters(cd * Math.PI / 4 * d * d), deployment);
    }

    /// <summary>A streamer.</summary>
    /// <param name="dragArea">
    /// Drag coefficient times the area of one face [m2], 1 cm2 to 100 m2. Published coefficients spread widely, 0.1 to
    /// 0.4 on that area (pleated crepe; from memory, little confidence), and fall with speed.
    /// </param>
    /// <param name="deployment">What brings it out.</param>
    /// <returns>The recovery.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static Recovery Streamer(Area dragArea, DeploymentTrigger deployment) =>
        new(RecoveryKind.Streamer, Guard.In(dragArea, 1e-4, 100, nameof(dragArea)), Guard.NotNull(deployment, nameof(deployment)));

    /// <summary>A body that cannot fly straight and turns end over end.</summary>
    /// <param name="dragArea">
    /// Drag coefficient times area while tumbling [m2], 1 mm2 to 100 m2. A first estimate is the side area times 0.7 to
    /// 0.9 (cylinder broadside at length over diameter 5 to 20: S. F. Hoerner, Fluid-Dynamic Drag, 1965; from memory),
    /// averaged over a turn.
    /// </param>
    /// <param name="deployment">What sets it tumbling.</param>
    /// <returns>The recovery.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static Recovery Tumbling(Area dragArea, DeploymentTrigger deployment) =>
        new(RecoveryKind.Tumbling, Guard.In(dragArea, 1e-6, 100, nameof(dragArea)), Guard.NotNull(deployment, nameof(deployment)));

    /// <summary>Chooses by case; each device gives its drag area [m2] and its trigger.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="parachute">The answer for a parachute.</param>
    /// <param name="streamer">The answer for a streamer.</param>
    /// <param name="tumbling">The answer for a tumbling body.</param>
    /// <param name="ballistic">The answer for a body that falls nose first.</param>
    /// <returns>The answer of the case at hand.</returns>
    public T Match<T>(Func<Area, DeploymentTrigger, T> parachute, Func<Area, DeploymentTrigger, T> streamer,
        Func<Area, DeploymentTrigger, T> tumbling, Func<T> ballistic) => Kind switch
        {
            RecoveryKind.Parachute => parachute(DragArea, Deployment!),
            RecoveryKind.Streamer => streamer(DragArea, Deployment!),
            RecoveryKind.Tumbling => tumbling(DragArea, Deployment!),
            _ => ballistic(),
        };

    /// <summary>The recovery in words.</summary>
    /// <returns>Kind, drag area and what brings it out.</returns>
    public override string ToString() => Kind == RecoveryKind.Ballistic
        ? "nose first, nothing slows it"
        : Invariant.Text($"{(Kind == RecoveryKind.Tumbling ? "tumbles" : Kind == RecoveryKind.Streamer ? "streamer" : "parachute")}, "
            + $"drag area {DragArea.SquareCentimeters:G4} cm2, {Deployment}");
}
