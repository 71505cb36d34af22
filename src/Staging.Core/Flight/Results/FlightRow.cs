namespace Staging.Core.Flight;

/// <summary>One row of the columns, in SI units.</summary>
internal readonly record struct FlightRow(
    double Time, double Height, double Velocity, double Acceleration, double Mass, double Thrust, double Drag, double Mach,
    double DynamicPressure)
{
    /// <summary>The value of one channel.</summary>
    public double this[FlightChannel channel] => channel switch
    {
        FlightChannel.Height => Height,
        FlightChannel.Velocity => Velocity,
        FlightChannel.Acceleration => Acceleration,
        FlightChannel.Mass => Mass,
        FlightChannel.Thrust => Thrust,
        FlightChannel.Drag => Drag,
        FlightChannel.MachNumber => Mach,
        _ => DynamicPressure,
    };
}
