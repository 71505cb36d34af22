using System.Collections.Immutable;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Fronts;

/// <summary>
/// Front travel in closed form: a steady stream of hot gas pushes the air out of a duct that is open at its far end,
/// without mixing and at the pressure of the air.
/// </summary>
/// <remarks>
/// Each parcel cools with age as <see cref="FrontPath.ParcelTemperature"/> describes; the column is their sum, x = mdot
/// R/(p A) times the integral of T over the age, so the front runs at mdot R T/(p A) with the temperature T of the
/// first parcel. Without heat loss x = mdot R T0 t/(p A). The derivation is in the theory page on fronts. It holds
/// while the front speed is low compared with the speed of sound: see <see cref="Check"/>.
/// </remarks>
public sealed record DisplacementFront
{
    private const double LongestTime_s = 100, MaxStation_m = 100;

    /// <summary>The duct.</summary>
    public required FrontPath Path { get; init => field = Guard.NotNull(value); }

    /// <summary>The hot gas, particles included (<see cref="DustyGas.Equivalent"/>).</summary>
    public required PerfectGas Products { get; init => field = Guard.NotNull(value); }

    /// <summary>Temperature at which the gas enters [K], 200 to 4000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature SourceTemperature { get; init => field = Guard.In(value, 200, 4000); }

    /// <summary>Mass that enters each second [kg/s], above 0 and at most 100.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required MassFlow MassFlow
    {
        get;
        init
        {
            Guard.Above(value.KilogramsPerSecond, 0, 100, "kg/s", nameof(MassFlow));
            field = value;
        }
    }

    /// <summary>Speed of the front at the start, mdot R T0/(p A).</summary>
    public Speed InitialSpeed => SpeedAt(Duration.Zero);

    private Cooling Parcel => Path.CoolingOf(Products.Constants, SourceTemperature.Kelvins);

    /// <summary>Volume for each kelvin of the stream, as length of bore per second [m/(s K)].</summary>
    private double LengthRate => MassFlow.KilogramsPerSecond * Products.Constants.R / (Path.Air.Pressure.Pascals * Path.Area_m2);

    /// <summary>Whether the front is slow compared with sound.</summary>
    /// <returns>
    /// A warning <c>FRO001</c> when its first speed passes 0.3 of the speed of sound in the air ahead.
    /// </returns>
    public ImmutableArray<ModelFinding> Check() => FrontChecks.Speed(Path.Air, InitialSpeed.MetersPerSecond, nameof(MassFlow));

    /// <summary>Station of the front.</summary>
    /// <param name="time">Time since the stream began [s], 0 to 100.</param>
    /// <returns>Distance from the start of the duct.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length TravelAt(Duration time) => Length.FromMeters(LengthRate * Parcel.IntegralTo(Checked(time)));

    /// <summary>Speed of the front.</summary>
    /// <param name="time">Time since the stream began [s], 0 to 100.</param>
    /// <returns>The speed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Speed SpeedAt(Duration time) => Speed.FromMetersPerSecond(LengthRate * Parcel.TemperatureAt(Checked(time)));

    /// <summary>Temperature of the first products: the coldest of the column.</summary>
    /// <param name="time">Time since the stream began [s], 0 to 100.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Temperature FrontTemperatureAt(Duration time) => Temperature.FromKelvins(Parcel.TemperatureAt(Checked(time)));

    /// <summary>
    /// When the front arrives at a station; the inverse of <see cref="TravelAt"/>. A column that is fed arrives
    /// everywhere.
    /// </summary>
    /// <param name="station">Distance from the start of the duct [m], 0 to 100.</param>
    /// <returns>Time since the stream began.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Duration ArrivalAt(Length station) =>
        Duration.FromSeconds(Parcel.AgeOfIntegral(Guard.In(station, 0, MaxStation_m, nameof(station)).Meters / LengthRate));

    /// <summary>
    /// Temperature at which the first products arrive at a station, Tw + (T0 - Tw) exp(-h pi D x/(mdot cp)).
    /// </summary>
    /// <param name="station">Distance from the start of the duct [m], 0 to 100.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Temperature ArrivalTemperatureAt(Length station)
    {
        double x = Guard.In(station, 0, MaxStation_m, nameof(station)).Meters;
        double h = Path.WallHeatTransfer.WattsPerSquareMeterKelvin, Tw = Path.WallTemperature.Kelvins;
        double transferUnits = h * Math.PI * Path.Bore.Meters * x / (MassFlow.KilogramsPerSecond * Products.Constants.Cp);
        return Temperature.FromKelvins(Tw + (SourceTemperature.Kelvins - Tw) * Math.Exp(-transferUnits));
    }

    /// <summary>
    /// Heat lost to the wall by the whole column, mdot cp times the integral of T0 - T over the age.
    /// </summary>
    /// <param name="time">Time since the stream began [s], 0 to 100.</param>
    /// <returns>The heat.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Energy HeatLostBy(Duration time)
    {
        double t = Checked(time);
        return Energy.FromJoules(MassFlow.KilogramsPerSecond * Products.Constants.Cp * (SourceTemperature.Kelvins * t
            - Parcel.IntegralTo(t)));
    }

    private static double Checked(Duration time) => Guard.In(time, 0, LongestTime_s, nameof(time)).Seconds;
}
