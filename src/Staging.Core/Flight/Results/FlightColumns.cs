namespace Staging.Core.Flight;

/// <summary>The course of a body as columns of equal length, for plots and notebooks.</summary>
/// <param name="Time_s">Time from ignition of the lowest stage [s]; a jump has two rows with one time.</param>
/// <param name="Height_m">Height above the site [m].</param>
/// <param name="Velocity_m_per_s">Velocity [m/s]: along the launch direction on the way up, vertical on the way down;
/// upwards positive.</param>
/// <param name="Acceleration_m_per_s2">Its rate of change [m/s2].</param>
/// <param name="Mass_kg">Mass [kg].</param>
/// <param name="Thrust_N">Thrust [N].</param>
/// <param name="Drag_N">Drag [N], at least 0.</param>
/// <param name="MachNumber">Mach number [-].</param>
/// <param name="DynamicPressure_Pa">Dynamic pressure rho v^2/2 [Pa].</param>
public sealed record FlightColumns(
    ReadOnlyMemory<double> Time_s,
    ReadOnlyMemory<double> Height_m,
    ReadOnlyMemory<double> Velocity_m_per_s,
    ReadOnlyMemory<double> Acceleration_m_per_s2,
    ReadOnlyMemory<double> Mass_kg,
    ReadOnlyMemory<double> Thrust_N,
    ReadOnlyMemory<double> Drag_N,
    ReadOnlyMemory<double> MachNumber,
    ReadOnlyMemory<double> DynamicPressure_Pa);
