using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>A stream that washes the nozzle plane.</summary>
/// <param name="MassFlux">Density times speed [kg/(m2 s)].</param>
/// <param name="Temperature">Temperature that it has when brought to rest [K].</param>
/// <param name="ProductFraction">Mass fraction of products [-].</param>
/// <param name="HeatCapacity">Heat capacity at constant pressure [J/(kg K)].</param>
internal readonly record struct NozzleStream(double MassFlux, double Temperature, double ProductFraction, double HeatCapacity)
{
    /// <summary>Gas of a zone at a pressure [Pa] that moves at a speed [m/s].</summary>
    public NozzleStream(in Zone<Real> gas, double pressure, double speed)
        : this(gas.DensityAt(pressure) * speed, gas.Temperature, gas.ProductFraction, gas.Cv + gas.R)
    {
    }
}
