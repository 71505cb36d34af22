using System.Collections.Immutable;
using Staging.Core.Gases;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Fronts;

/// <summary>
/// Front travel by displacement under a given history of mass flow: as <see cref="DisplacementFront"/>, for a source
/// that changes.
/// </summary>
/// <remarks>
/// x(t) = R/(p A) times the integral of mdot(s) T(t - s) over s from 0 to t, with the temperature T(age) of
/// <see cref="FrontPath.ParcelTemperature"/>. Taken piece by piece with 20-point Gauss-Legendre quadrature, on pieces
/// so short that its error is round-off only. Once the flow falls, a column that cools shrinks, and the front recedes.
/// </remarks>
public sealed record HistoryFront
{
    /// <summary>
    /// Longest piece of the quadrature, over the time 1/(kappa T0) in which a parcel cools: at 4 it converges as
    /// 2.6^-40.
    /// </summary>
    private const double LongestPiece = 4;

    /// <summary>Parts into which each piece of the history is divided in the search for the first arrival.</summary>
    private const int ScanParts = 16;

    /// <summary>Width to which an arrival is located [s].</summary>
    private const double ArrivalWidth_s = 1e-12;

    /// <summary>The duct.</summary>
    public required FrontPath Path { get; init => field = Guard.NotNull(value); }

    /// <summary>The hot gas, particles included (<see cref="DustyGas.Equivalent"/>).</summary>
    public required PerfectGas Products { get; init => field = Guard.NotNull(value); }

    /// <summary>Temperature at which the gas enters [K], 200 to 4000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature SourceTemperature { get; init => field = Guard.In(value, 200, 4000); }

    /// <summary>Mass that enters each second.</summary>
    public required MassFlowHistory History { get; init => field = Guard.NotNull(value); }

    /// <summary>Whether the front is slow compared with sound.</summary>
    /// <returns>
    /// A warning <c>FRO001</c> when the speed at the greatest flow passes 0.3 of the speed of sound in the air ahead.
    /// </returns>
    public ImmutableArray<ModelFinding> Check()
    {
        double max = 0;
        foreach (double m in History.MassFlow_kgs.Span)
            max = Math.Max(max, m);
        return FrontChecks.Speed(Path.Air, LengthOfKelvinKilogram * max * SourceTemperature.Kelvins, nameof(History));
    }

    /// <summary>Station of the front.</summary>
    /// <param name="time">Time on the clock of the history [s], 0 to 100.</param>
    /// <returns>Distance from the start of the duct.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length TravelAt(Duration time) => Length.FromMeters(Travel(Checked(time)));

    /// <summary>
    /// Speed of the front: the volume that enters, less the contraction of the gas that cools; negative when the
    /// front recedes.
    /// </summary>
    /// <param name="time">Time on the clock of the history [s], 0 to 100.</param>
    /// <returns>The speed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Speed SpeedAt(Duration time)
    {
        double t = Checked(time), T0 = SourceTemperature.Kelvins;
        double shrinking = Sum(t, new Integrand(History, Path.CoolingOf(Products.Constants, T0), t, Path.WallTemperature.Kelvins));
        return Speed.FromMetersPerSecond(LengthOfKelvinKilogram * (History.At(t) * T0 - shrinking));
    }

    /// <summary>Heat lost to the wall by the whole column.</summary>
    /// <param name="time">Time on the clock of the history [s], 0 to 100.</param>
    /// <returns>The heat: cp times the integral of mdot (T0 - T).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Energy HeatLostBy(Duration time)
    {
        double t = Checked(time), T0 = SourceTemperature.Kelvins;
        double entered = Sum(t, new Integrand(History, new Cooling(0, T0, T0), t, null));
        return Energy.FromJoules(Products.Constants.Cp * (entered - Travel(t) / LengthOfKelvinKilogram));
    }

    /// <summary>When the front first arrives at a station.</summary>
    /// <param name="station">Distance from the start of the duct [m], above 0 and at most 100.</param>
    /// <returns>
    /// Time on the clock of the history; null when the front never gets there. A front that is there, or beyond, for
    /// less than a sixteenth of a piece of the history may be missed.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Duration? ArrivalAt(Length station)
    {
        double x = Guard.Above(station.Meters, 0, 100, "m", nameof(station));
        ReadOnlySpan<double> knots = History.Time_s.Span;
        double low = knots[0], before = -x;
        for (int i = 1; i < knots.Length; i++)
        {
            double part = (knots[i] - knots[i - 1]) / ScanParts;
            for (int k = 1; k <= ScanParts; k++)
            {
                double high = knots[i - 1] + k * part, after = Travel(high) - x;
                if (after >= 0)
                {
                    var ahead = new Ahead(this, x);
                    return Duration.FromSeconds(BracketedRoot.Shrink(ref ahead, low, before, high, after, ArrivalWidth_s).High);
                }

                (low, before) = (high, after);
            }
        }

        return null;
    }

    private double LengthOfKelvinKilogram => Products.Constants.R / (Path.Air.Pressure.Pascals * Path.Area_m2);

    private double Travel(double t) => LengthOfKelvinKilogram
        * Sum(t, new Integrand(History, Path.CoolingOf(Products.Constants, SourceTemperature.Kelvins), t, null));

    /// <summary>Integral over the history up to t, piece by piece.</summary>
    private double Sum(double t, in Integrand f)
    {
        ReadOnlySpan<double> knots = History.Time_s.Span;
        double piece = LongestPiece / (f.Kappa * SourceTemperature.Kelvins), sum = 0;
        for (int i = 1; i < knots.Length && knots[i - 1] < t; i++)
        {
            double from = knots[i - 1], to = Math.Min(knots[i], t);
            int parts = (int)Math.Ceiling(Math.Max(1, (to - from) / piece));
            for (int k = 0; k < parts; k++)
                sum += GaussLegendre.Integrate(f, from + (to - from) * k / parts, from + (to - from) * (k + 1) / parts);
        }

        return sum;
    }

    private static double Checked(Duration time) => Guard.In(time, 0, 100, nameof(time)).Seconds;

    /// <summary>
    /// mdot(s) T(t - s), or with a wall temperature mdot(s) times the rate of cooling, kappa T (T - Tw).
    /// </summary>
    private readonly struct Integrand(MassFlowHistory history, Cooling parcel, double t, double? wall) : IIntegrand
    {
        public double Kappa => parcel.Kappa;

        public double At(double s)
        {
            double T = parcel.TemperatureAt(t - s);
            return history.At(s) * (wall is { } Tw ? parcel.Kappa * T * (T - Tw) : T);
        }
    }

    private readonly struct Ahead(HistoryFront front, double station) : IScalarFunction
    {
        public double At(double t) => front.Travel(t) - station;
    }
}
