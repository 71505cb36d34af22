using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// Heat that gas gives to a wall of a constant temperature: by a coefficient, and by radiation of its products.
/// </summary>
/// <remarks>
/// Flux h (T - T0) + eps Y sigma (T^4 - T0^4) with the mass fraction Y of products, as at the grain: air radiates
/// nothing. T^4 - T0^4 = (T^2 + T0^2)(T + T0)(T - T0), so radiation is a coefficient that rises with the temperature:
/// some 140 W/(m2 K) for products of 1600 K with an emissivity of 0.5. The wall stays as cold as it was: in the
/// milliseconds that count paper warms by tens of kelvin.
/// </remarks>
internal readonly struct WallExchange(double convective, double emissivity, double wall)
{
    /// <summary>Heat transfer without radiation [W/(m2 K)].</summary>
    public double Convective { get; } = convective;

    /// <summary>Emissivity of the products times the Stefan-Boltzmann constant [W/(m2 K4)].</summary>
    public double Emittance { get; } = emissivity * Radiation.StefanBoltzmann;

    /// <summary>Temperature of the wall [K].</summary>
    public double Wall { get; } = wall;

    /// <summary>
    /// Heat transfer, radiation included [W/(m2 K)], from gas of a temperature [K] and a fraction of products [-].
    /// </summary>
    public T Coefficient<T>(T temperature, T products)
        where T : struct, IReal<T> =>
        Convective + Emittance * products * ((temperature * temperature + Wall * Wall) * (temperature + Wall));

    /// <summary>Heat that a parcel of gas gives to an area [m2] of the wall [W].</summary>
    public T Heat<T>(in Zone<T> gas, T area)
        where T : struct, IReal<T> => Coefficient(gas.Temperature, gas.ProductFraction) * area * (gas.Temperature - Wall);

    /// <summary>
    /// Share of its excess over the wall that gas loses in a time [-]: 1 - exp(-x) with 1/(1 + x + x^2/2) for exp(-x),
    /// second order and below one for any time, and the coefficient half-way down.
    /// </summary>
    /// <param name="time">The time [s].</param>
    /// <param name="area">Wall before the gas [m2].</param>
    /// <param name="capacity">Heat capacity of the gas [J/K].</param>
    /// <param name="temperature">Temperature of the gas [K].</param>
    /// <param name="products">Its mass fraction of products [-].</param>
    public double ShareLost(double time, double area, double capacity, double temperature, double products)
    {
        double first = time * Coefficient<Real>(temperature, products) * area / capacity;
        double middle = Wall + (temperature - Wall) / (1 + 0.5 * first);
        double x = time * Coefficient<Real>(middle, products) * area / capacity;
        return 1 - 1 / (1 + x + 0.5 * x * x);
    }
}
