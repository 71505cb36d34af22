namespace Staging.Core.Flight;

/// <summary>
/// A stretch of flight over which nothing jumps: thrust is a straight line, mass a parabola, drag one line of a table
/// or one fixed area.
/// </summary>
internal readonly record struct FlightSegment
{
    /// <summary>Thrust and mass.</summary>
    public Propulsion Push { get; init; }

    /// <summary>Line of the body's drag table, or the fixed drag area of a device.</summary>
    public DragSegment Line { get; init; }

    /// <summary>dh/dt over velocity [-]: the sine of the elevation on the way up, 1 on the way down.</summary>
    public double Rise { get; init; }

    /// <summary>Share of gravity against the motion [-]: the same sine, on the guide plus friction by load.</summary>
    public double GravityShare { get; init; }

    /// <summary>Constant friction of the guide [N].</summary>
    public double Friction { get; init; }

    /// <summary>+1 on the way up; -1 on the way down, where the nose points at the ground.</summary>
    public double ThrustSign { get; init; }

    /// <summary>Whether the guide still holds the body at rest.</summary>
    public bool Held { get; init; }

    /// <summary>Start on the clock of the flight [s].</summary>
    public double Start => Push.Start;
}
