using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Fronts;

/// <summary>
/// How a parcel of hot gas cools on its way through a duct, at constant pressure and with a constant coefficient of
/// heat transfer.
/// </summary>
/// <remarks>
/// Energy balance of a slug of length dx: m cp dT/dt = -h pi D dx (T - Tw), with dx = m R T/(p A). So dT/dt = -kappa T
/// (T - Tw), kappa = 4 h R/(D cp p), whose solution is a logistic curve. Moved along with the parcel it is the same as
/// the textbook exponential over distance, T - Tw falls by exp(-h pi D x/(mdot cp)) (F. P. Incropera and D. P. DeWitt,
/// Fundamentals of Heat and Mass Transfer, internal flow at constant wall temperature; from memory).
/// </remarks>
public static class ParcelCooling
{
    private const double MinTemperature_K = 200, MaxTemperature_K = 4000;

    /// <summary>Temperature of a parcel at an age.</summary>
    /// <param name="path">The duct.</param>
    /// <param name="gas">The gas of the parcel, particles included.</param>
    /// <param name="start">Temperature at age zero [K], 200 to 4000.</param>
    /// <param name="age">Age [s], 0 to 100.</param>
    /// <returns>The temperature, between start and wall.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static Temperature TemperatureAt(FrontPath path, PerfectGas gas, Temperature start, Duration age) =>
        Temperature.FromKelvins(Of(path, gas, start).TemperatureAt(Guard.In(age, 0, 100, nameof(age)).Seconds));

    /// <summary>Heat that each kilogram has given to the wall by an age, cp (T0 - T).</summary>
    /// <param name="path">The duct.</param>
    /// <param name="gas">The gas of the parcel, particles included.</param>
    /// <param name="start">Temperature at age zero [K], 200 to 4000.</param>
    /// <param name="age">Age [s], 0 to 100.</param>
    /// <returns>The heat; negative where the wall is the hotter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static SpecificEnergy HeatLostAt(FrontPath path, PerfectGas gas, Temperature start, Duration age) =>
        SpecificEnergy.FromJoulesPerKilogram(gas.Constants.Cp * (start.Kelvins - TemperatureAt(path, gas, start, age).Kelvins));

    /// <summary>
    /// Age at which the parcel has cooled to a temperature; the inverse of <see cref="TemperatureAt"/>.
    /// </summary>
    /// <param name="path">The duct.</param>
    /// <param name="gas">The gas of the parcel, particles included.</param>
    /// <param name="start">Temperature at age zero [K], 200 to 4000, above that of the wall.</param>
    /// <param name="end">Temperature asked for [K], between that of the wall and the start; the wall's own is never
    /// reached.</param>
    /// <returns>The age; null where the wall takes no heat.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static Duration? TimeToCool(FrontPath path, PerfectGas gas, Temperature start, Temperature end)
    {
        Cooling cooling = Of(path, gas, start);
        double wall = path.WallTemperature.Kelvins;
        double T = Guard.Above(end.Kelvins, wall, Guard.Above(start.Kelvins, wall, MaxTemperature_K, "K", nameof(start)), "K", nameof(end));
        return cooling.Kappa > 0 ? Duration.FromSeconds(cooling.AgeAt(T)) : null;
    }

    private static Cooling Of(FrontPath path, PerfectGas gas, Temperature start)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(gas);
        return path.CoolingOf(gas.Constants, Guard.In(start, MinTemperature_K, MaxTemperature_K, nameof(start)).Kelvins);
    }
}
