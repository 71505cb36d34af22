namespace Staging.Core.Gaps;

/// <summary>A molten droplet of products as it leaves the booster.</summary>
/// <param name="Diameter">Diameter [m].</param>
/// <param name="Density">Density of the melt [kg/m3].</param>
/// <param name="HeatCapacity">Heat capacity [J/(kg K)]; the heat of freezing is left out, so a droplet arrives no
/// colder than computed.</param>
/// <param name="Emissivity">Emissivity of its surface [-].</param>
/// <param name="Temperature">Temperature at the start [K].</param>
/// <param name="Speed">Speed along the tube at the start [m/s].</param>
internal readonly record struct Droplet(
    double Diameter, double Density, double HeatCapacity, double Emissivity, double Temperature, double Speed);

/// <summary>The gas that a droplet flies through: air, alike everywhere.</summary>
/// <param name="Pressure">Pressure [Pa].</param>
/// <param name="Temperature">Temperature [K].</param>
/// <param name="Speed">Speed along the tube [m/s].</param>
/// <param name="Walls">Temperature of what the droplet radiates to [K].</param>
internal readonly record struct DropletGas(double Pressure, double Temperature, double Speed, double Walls);

/// <summary>A droplet at the distance asked for.</summary>
/// <param name="Time">Time since it left [s].</param>
/// <param name="Temperature">Temperature [K].</param>
/// <param name="Speed">Speed along the tube [m/s].</param>
internal readonly record struct DropletArrival(double Time, double Temperature, double Speed);
