using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Fronts;

/// <summary>
/// The duct along which hot gas pushes the air ahead of it: its bore, the air, and the heat transfer to the wall.
/// </summary>
/// <remarks>
/// The far end is open to the air, so the pressure stays that of the air. Immutable; may be read from any thread.
/// <para>
/// A parcel of hot gas cools at constant pressure and with a constant coefficient of heat transfer. Energy
/// balance of a slug of length dx: m cp dT/dt = -h pi D dx (T - Tw), with dx = m R T/(p A). So dT/dt = -kappa T (T -
/// Tw), kappa = 4 h R/(D cp p), whose solution is a logistic curve. Followed along the duct it is the textbook
/// exponential over distance, T - Tw falls by exp(-h pi D x/(mdot cp)) (F. P. Incropera and D. P. DeWitt,
/// Fundamentals of Heat and Mass Transfer, internal flow at constant wall temperature; from memory).
/// </para>
/// </remarks>
public sealed record FrontPath
{
    private const double MinParcel_K = 200, MaxParcel_K = 4000;

    /// <summary>Inner diameter [m], 1 mm to 1 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Bore { get; init => field = Guard.In(value, 1e-3, 1); }

    /// <summary>The air that is pushed away; its pressure is the pressure all along the duct.</summary>
    public required GasState Air { get; init => field = Guard.NotNull(value); }

    /// <summary>Temperature of the wall, constant while the gas passes [K], 200 to 2000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature WallTemperature { get; init => field = Guard.In(value, 200, 2000); }

    /// <summary>Heat transfer from gas to wall [W/(m2 K)], 0 (none) to 20000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required HeatTransferCoefficient WallHeatTransfer { get; init => field = Guard.In(value, 0, 20_000); }

    /// <summary>Cross-section of the bore.</summary>
    public Area CrossSection => Area.FromSquareMeters(Area_m2);

    /// <summary>Temperature of a parcel of hot gas at a given age.</summary>
    /// <param name="gas">The gas of the parcel, particles included.</param>
    /// <param name="start">Temperature at age zero [K], 200 to 4000.</param>
    /// <param name="age">Age [s], 0 to 100.</param>
    /// <returns>The temperature, between start and wall.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public Temperature ParcelTemperature(PerfectGas gas, Temperature start, Duration age) =>
        Temperature.FromKelvins(CoolingOf(gas, start).TemperatureAt(Guard.In(age, 0, 100, nameof(age)).Seconds));

    /// <summary>Heat that each kilogram of a parcel has lost to the wall by a given age, cp (T0 - T).</summary>
    /// <param name="gas">The gas of the parcel, particles included.</param>
    /// <param name="start">Temperature at age zero [K], 200 to 4000.</param>
    /// <param name="age">Age [s], 0 to 100.</param>
    /// <returns>The heat; negative where the wall is the hotter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public SpecificEnergy ParcelHeatLoss(PerfectGas gas, Temperature start, Duration age)
    {
        Temperature now = ParcelTemperature(gas, start, age);
        return SpecificEnergy.FromJoulesPerKilogram(gas.Constants.Cp * (start.Kelvins - now.Kelvins));
    }

    /// <summary>
    /// Age at which a parcel has cooled to a temperature; the inverse of <see cref="ParcelTemperature"/>.
    /// </summary>
    /// <param name="gas">The gas of the parcel, particles included.</param>
    /// <param name="start">Temperature at age zero [K], 200 to 4000, above that of the wall.</param>
    /// <param name="end">Temperature at the age [K], between that of the wall and the start; the wall's own is never
    /// reached.</param>
    /// <returns>The age; null where the wall takes no heat.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public Duration? TimeToCool(PerfectGas gas, Temperature start, Temperature end)
    {
        Cooling cooling = CoolingOf(gas, start);
        double wall = WallTemperature.Kelvins;
        double T = Guard.Above(end.Kelvins, wall, Guard.Above(start.Kelvins, wall, MaxParcel_K, "K", nameof(start)), "K", nameof(end));
        return cooling.Kappa > 0 ? Duration.FromSeconds(cooling.AgeAt(T)) : null;
    }

    /// <summary>Cross-section [m2].</summary>
    internal double Area_m2 => Math.PI / 4 * Bore.Meters * Bore.Meters;

    /// <summary>How a parcel of a gas cools along the duct.</summary>
    internal Cooling CoolingOf(in GasConstants gas, double start) => new(
        4 * WallHeatTransfer.WattsPerSquareMeterKelvin * gas.R / (Bore.Meters * gas.Cp * Air.Pressure.Pascals), start,
        WallTemperature.Kelvins);

    private Cooling CoolingOf(PerfectGas gas, Temperature start)
    {
        ArgumentNullException.ThrowIfNull(gas);
        return CoolingOf(gas.Constants, Guard.In(start, MinParcel_K, MaxParcel_K, nameof(start)).Kelvins);
    }
}
