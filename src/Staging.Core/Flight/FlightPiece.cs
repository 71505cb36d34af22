namespace Staging.Core.Flight;

/// <summary>
/// A stretch of flight over which nothing jumps: thrust is a straight line, mass a parabola, drag one line of a table or one fixed area.
/// </summary>
internal readonly record struct FlightPiece
{
    /// <summary>Start on the clock of the flight [s].</summary>
    public double Start { get; init; }

    /// <summary>Thrust at the start [N].</summary>
    public double Thrust0 { get; init; }

    /// <summary>Slope of the thrust [N/s].</summary>
    public double ThrustSlope { get; init; }

    /// <summary>Mass at the start [kg].</summary>
    public double Mass0 { get; init; }

    /// <summary>Mass flow at the start [kg/s].</summary>
    public double MassFlow { get; init; }

    /// <summary>Half the slope of the mass flow [kg/s2].</summary>
    public double HalfMassFlowSlope { get; init; }

    /// <summary>Line of the body's drag table, or the fixed drag area of a device.</summary>
    public DragLine Line { get; init; }

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

    /// <summary>Thrust at a time [N].</summary>
    public double Thrust(double t) => Thrust0 + ThrustSlope * (t - Start);

    /// <summary>Mass at a time [kg].</summary>
    public double Mass(double t)
    {
        double tau = t - Start;
        return Mass0 - tau * (MassFlow + HalfMassFlowSlope * tau);
    }
}
