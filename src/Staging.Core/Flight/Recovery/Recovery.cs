using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>How a body comes down. Where a device acts its drag area replaces the drag of the body.</summary>
public abstract record Recovery
{
    private protected Recovery()
    {
    }

    /// <summary>Chooses by case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="parachute">The answer for a parachute.</param>
    /// <param name="streamer">The answer for a streamer.</param>
    /// <param name="tumbling">The answer for a tumbling body.</param>
    /// <param name="ballistic">The answer for a body that falls nose first.</param>
    /// <returns>The answer of the case at hand.</returns>
    public T Match<T>(Func<Parachute, T> parachute, Func<Streamer, T> streamer, Func<Tumbling, T> tumbling, Func<Ballistic, T> ballistic) =>
        this switch
        {
            Parachute x => parachute(x),
            Streamer x => streamer(x),
            Tumbling x => tumbling(x),
            _ => ballistic((Ballistic)this),
        };

    /// <summary>A parachute.</summary>
    public sealed record Parachute : Recovery
    {
        /// <summary>Drag coefficient times canopy area [m2], 1 cm2 to 1000 m2.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Area DragArea { get; init => field = Guard.In(value, 1e-4, 1000); }

        /// <summary>What brings it out.</summary>
        public required DeploymentTrigger Deployment { get; init => field = Guard.NotNull(value); }

        /// <summary>A flat round canopy.</summary>
        /// <param name="diameter">Diameter laid flat [m], 1 cm to 30 m.</param>
        /// <param name="dragCoefficient">
        /// Coefficient on the laid-flat area [-], 0.1 to 2.5; 0.75 to 0.80 is usual for flat circular canopies
        /// (T. W. Knacke, Parachute Recovery Systems Design Manual, NWC TP 6575, 1991, table 5-1; from memory).
        /// </param>
        /// <param name="deployment">What brings it out.</param>
        /// <returns>The parachute.</returns>
        /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
        public static Parachute Round(Length diameter, double dragCoefficient, DeploymentTrigger deployment)
        {
            double d = Guard.In(diameter, 0.01, 30).Meters;
            double cd = Guard.In(dragCoefficient, 0.1, 2.5, property: nameof(dragCoefficient));
            return new Parachute { DragArea = Area.FromSquareMeters(cd * Math.PI / 4 * d * d), Deployment = deployment };
        }
    }

    /// <summary>A streamer.</summary>
    public sealed record Streamer : Recovery
    {
        /// <summary>
        /// Drag coefficient times the area of one face [m2], 1 cm2 to 100 m2. Published coefficients spread widely, 0.1
        /// to 0.4 on that area (pleated crepe; from memory, little confidence), and fall with speed.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Area DragArea { get; init => field = Guard.In(value, 1e-4, 100); }

        /// <summary>What brings it out.</summary>
        public required DeploymentTrigger Deployment { get; init => field = Guard.NotNull(value); }
    }

    /// <summary>A body that cannot fly straight and turns end over end.</summary>
    public sealed record Tumbling : Recovery
    {
        /// <summary>
        /// Drag coefficient times area while tumbling [m2], 1 mm2 to 100 m2. A first estimate is the side area times
        /// 0.7 to 0.9 (cylinder broadside at length over diameter 5 to 20: S. F. Hoerner, Fluid-Dynamic Drag, 1965;
        /// from memory), averaged over a turn.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Area DragArea { get; init => field = Guard.In(value, 1e-6, 100); }

        /// <summary>What sets it tumbling.</summary>
        public required DeploymentTrigger Deployment { get; init => field = Guard.NotNull(value); }
    }

    /// <summary>Nothing slows it but its own drag: it comes down nose first.</summary>
    public sealed record Ballistic : Recovery;
}
