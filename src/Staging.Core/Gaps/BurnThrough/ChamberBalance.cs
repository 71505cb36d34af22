using Staging.Core.Gases;

namespace Staging.Core.Gaps;

/// <summary>The chamber of an end burner in balance: its throat passes as much gas as its burning face makes.</summary>
/// <remarks>
/// <c>rho A_b a (p/p0)^n = p A_t/c*</c>, with the characteristic velocity <c>c* = sqrt(R T)/psi(gamma)</c> and the
/// critical flow factor psi (G. P. Sutton and O. Biblarz, Rocket Propulsion Elements, 7th ed. 2001, equations 3-32 and
/// 11-4; numbers from memory). The chamber fills in some milliseconds, a web of 50 mm burns for seconds: quasi-steady.
/// </remarks>
internal static class ChamberBalance
{
    /// <summary>Characteristic velocity of a gas of a temperature [K] [m/s].</summary>
    public static double CharacteristicVelocity(in GasConstants gas, double temperature) =>
        Math.Sqrt(gas.R * temperature) / ChokedFlow.CriticalFlowFactor(gas.Gamma);

    /// <summary>Absolute pressure [Pa].</summary>
    /// <param name="density">Density of the propellant [kg/m3].</param>
    /// <param name="face">Burning face [m2].</param>
    /// <param name="rate">Burning rate at one atmosphere [m/s].</param>
    /// <param name="exponent">Its exponent of pressure [-], below 1.</param>
    /// <param name="characteristicVelocity">Characteristic velocity of the products [m/s].</param>
    /// <param name="throat">Throat area [m2].</param>
    public static double Pressure(double density, double face, double rate, double exponent, double characteristicVelocity,
        double throat) =>
        BurnRateLaw.ReferencePressure_Pa
        * Math.Pow(density * face * rate * characteristicVelocity / (throat * BurnRateLaw.ReferencePressure_Pa), 1 / (1 - exponent));

    /// <summary>
    /// Area of a spherical burning face about an ignition point on the axis, within a cylindrical grain [m2].
    /// </summary>
    /// <param name="burnt">Radius of the sphere: length burnt [m].</param>
    /// <param name="radius">Radius of the grain [m].</param>
    public static double Face(double burnt, double radius) =>
        2 * Math.PI * burnt * (burnt - Math.Sqrt(Math.Max(0, (burnt - radius) * (burnt + radius))));
}
