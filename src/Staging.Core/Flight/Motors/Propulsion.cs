namespace Staging.Core.Flight;

/// <summary>
/// Thrust and mass between two corners of the thrust histories: a straight line and a parabola of time.
/// </summary>
internal readonly record struct Propulsion
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

    /// <summary>Thrust at a time [N].</summary>
    public double Thrust(double t) => Thrust0 + ThrustSlope * (t - Start);

    /// <summary>Mass at a time [kg].</summary>
    public double Mass(double t)
    {
        double tau = t - Start;
        return Mass0 - tau * (MassFlow + HalfMassFlowSlope * tau);
    }
}
