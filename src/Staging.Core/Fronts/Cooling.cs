using Staging.Core.Gases;

namespace Staging.Core.Fronts;

/// <summary>
/// A parcel of gas that cools at constant pressure in a duct: dT/da = -kappa T (T - Tw) with its age a and
/// kappa = 4 h R/(D cp p). Hotter gas is less dense, so each kilogram touches more wall: the rate grows with T.
/// </summary>
/// <remarks>
/// Solution: T = Tw/(1 - c exp(-kappa Tw a)) with c = 1 - Tw/T0, and its integral (1/kappa) ln(1 + T0/Tw (exp(kappa Tw
/// a) - 1)). Both keep full precision down to kappa = 0, where T = T0.
/// </remarks>
internal readonly struct Cooling(double kappa, double T0, double Tw)
{
    /// <summary>
    /// Above this exponent the growing exponential is moved out of the logarithm, to avoid overflow.
    /// </summary>
    private const double Large = 1;

    /// <summary>Rate constant [1/(K s)].</summary>
    public double Kappa => kappa;

    /// <summary>Share of the first excess temperature over the first temperature, 1 - Tw/T0 [-].</summary>
    private double C => 1 - Tw / T0;

    /// <summary>Temperature at an age [s].</summary>
    public double TemperatureAt(double a) => Tw / (Tw / T0 - C * NearZero.Expm1(-kappa * Tw * a));

    /// <summary>Integral of the temperature over the age [K s].</summary>
    public double IntegralTo(double a)
    {
        if (kappa == 0)
            return T0 * a;
        double z = kappa * Tw * a;
        return z < Large
            ? NearZero.Log1p(NearZero.Expm1(z) * T0 / Tw) / kappa
            : (z + Math.Log(T0 / Tw) + NearZero.Log1p(-C * Math.Exp(-z))) / kappa;
    }

    /// <summary>Age at which the integral has a value [s]: the inverse of <see cref="IntegralTo"/>.</summary>
    public double AgeOfIntegral(double integral)
    {
        if (kappa == 0)
            return integral / T0;
        double y = kappa * integral;
        double z = y < Large
            ? NearZero.Log1p(NearZero.Expm1(y) * Tw / T0)
            : y + Math.Log(Tw / T0) + NearZero.Log1p((T0 / Tw - 1) * Math.Exp(-y));
        return z / (kappa * Tw);
    }

    /// <summary>Age at which the parcel has a temperature strictly between the first and the wall's [s].</summary>
    public double AgeAt(double T) => Math.Log(C / (1 - Tw / T)) / (kappa * Tw);
}
