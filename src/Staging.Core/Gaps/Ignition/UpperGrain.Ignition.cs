using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <content>
/// Lighting of the face in closed form: a semi-infinite solid under constant heat flux, or under convection from gas of
/// constant temperature (Carslaw and Jaeger, sections 2.7 and 2.9, section numbers from memory). With the effusivity
/// e = sqrt(k rho c): constant flux, rise 2 q sqrt(t/pi)/e; convection, rise over excess of the gas
/// 1 - exp(H^2) erfc(H), H = h sqrt(t)/e.
/// </content>
public sealed partial record UpperGrain
{
    /// <summary>Longest time of a sketch [s]: the grain is thin against what heat penetrates later.</summary>
    private const double LongestTime_s = 100;

    /// <summary>Greatest H at which a time is searched [-]: the surface is then within 0.1 % of the gas.</summary>
    private const double MaxH = 1000;

    /// <summary>
    /// First try for H [-], and the growth of the bracket: a narrow one keeps the digits of a small root.
    /// </summary>
    private const double MinH = 1e-6, BracketGrowth = 4;

    /// <summary>Surface temperature under a constant heat flux.</summary>
    /// <param name="flux">Heat flux into the face [W/m2], 0 to 1e9.</param>
    /// <param name="time">Time under it [s], 0 to 100.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public Temperature SurfaceUnderFlux(HeatFlux flux, Duration time)
    {
        double q = Guard.In(flux.WattsPerSquareMeter, 0, 1e9, "W/m2", nameof(flux)),
            t = Guard.In(time, 0, LongestTime_s, nameof(time)).Seconds;
        return Temperature.FromKelvins(InitialTemperature.Kelvins + 2 * q * Math.Sqrt(t / Math.PI) / Effusivity);
    }

    /// <summary>Time to light under a constant heat flux, pi/4 k rho c ((T - Ti)/q)^2.</summary>
    /// <param name="flux">Heat flux into the face [W/m2], above 0 and at most 1e9.</param>
    /// <returns>The time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Duration TimeUnderFlux(HeatFlux flux)
    {
        double q = Guard.Above(flux.WattsPerSquareMeter, 0, 1e9, "W/m2", nameof(flux));
        double root = Effusivity * Rise / q;
        return Duration.FromSeconds(Math.PI / 4 * root * root);
    }

    /// <summary>Surface temperature under convection from gas of constant temperature.</summary>
    /// <param name="coefficient">Heat transfer coefficient [W/(m2 K)], 0 to 1e6.</param>
    /// <param name="gas">Temperature of the gas [K], 200 to 6000.</param>
    /// <param name="time">Time under it [s], 0 to 100.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public Temperature SurfaceUnderConvection(HeatTransferCoefficient coefficient, Temperature gas, Duration time)
    {
        double h = Guard.In(coefficient, 0, 1e6, nameof(coefficient)).WattsPerSquareMeterKelvin;
        double H = h * Math.Sqrt(Guard.In(time, 0, LongestTime_s, nameof(time)).Seconds) / Effusivity;
        double Ti = InitialTemperature.Kelvins;
        return Temperature.FromKelvins(Ti + (Guard.In(gas, 200, 6000, nameof(gas)).Kelvins - Ti) * (1 - ErrorFunction.ScaledComplement(H)));
    }

    /// <summary>Time to light under convection from gas of constant temperature.</summary>
    /// <param name="coefficient">Heat transfer coefficient [W/(m2 K)], above 0 and at most 1e6.</param>
    /// <param name="gas">Temperature of the gas [K], 200 to 6000.</param>
    /// <returns>The time; null where the gas is too cool to light it, or hot enough by less than 0.1 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public Duration? TimeUnderConvection(HeatTransferCoefficient coefficient, Temperature gas)
    {
        double h = Guard.Above(coefficient.WattsPerSquareMeterKelvin, 0, 1e6, "W/(m2 K)", nameof(coefficient));
        double excess = Guard.In(gas, 200, 6000, nameof(gas)).Kelvins - InitialTemperature.Kelvins;
        if (Rise <= 0)
            return Duration.Zero;
        if (!(excess > 0))
            return null;
        var shortfall = new Shortfall(Rise / excess);
        double low = 0, high = MinH;
        while (high < MaxH && shortfall.At(high) <= 0)
            (low, high) = (high, BracketGrowth * high);
        if (shortfall.At(high) <= 0)
            return null;
        double H = BracketedRoot.Shrink(ref shortfall, low, shortfall.At(low), high, shortfall.At(high), 0).High;
        double root = H * Effusivity / h;
        return Duration.FromSeconds(root * root);
    }

    private double Rise => Math.Max(0, IgnitionTemperature.Kelvins - InitialTemperature.Kelvins);

    /// <summary>How far the surface has passed a share of the gas's excess, against H.</summary>
    private readonly struct Shortfall(double share) : IScalarFunction
    {
        public double At(double H) => 1 - ErrorFunction.ScaledComplement(H) - share;
    }
}
