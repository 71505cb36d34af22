using UnitsNet;

namespace Staging.Core.Gases;

/// <summary>
/// A vessel of perfect gas with one ideal opening: emptying, filling from a supply of constant state, and the pressure
/// at which a vented one settles, in closed form. Dimensionless; time counts in <see cref="TimeUnit"/>. Adiabatic, the
/// gas left behind expands isentropically and entering gas brings its enthalpy; isothermal, the walls hold the
/// temperature.
/// </summary>
/// <remarks>
/// Mass balance and first law for a rigid vessel with the flow of NACA Report 1135 (Ames Research Staff, 1953).
/// </remarks>
public static partial class Vessel
{
    /// <summary>
    /// V/(Cd A sqrt(R T0)): the unit of time.
    /// The time constant of a choked isothermal vessel is this over <see cref="IsentropicFlow.CriticalFlowFactor"/>.
    /// </summary>
    /// <param name="volume">Volume of the vessel [m3], 1e-12 to 1e6.</param>
    /// <param name="effectiveArea">Area of the opening times its discharge coefficient [m2], 1e-12 to 1e4.</param>
    /// <param name="gas">The gas that flows.</param>
    /// <param name="temperature">For emptying the temperature in the vessel at the start; for filling that of the
    /// supply [K], 50 to 6000.</param>
    /// <returns>The unit of time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static Duration TimeUnit(Volume volume, Area effectiveArea, PerfectGas gas, Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(gas);
        double V = Guard.In(volume, 1e-12, 1e6, nameof(volume)).CubicMeters;
        double A = Guard.In(effectiveArea, 1e-12, 1e4, nameof(effectiveArea)).SquareMeters;
        double T = Guard.In(temperature, 50, 6000, nameof(temperature)).Kelvins;
        return Duration.FromSeconds(V / (A * Math.Sqrt(gas.Constants.R * T)));
    }
}
