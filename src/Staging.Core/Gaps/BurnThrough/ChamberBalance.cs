using Staging.Core.Gases;

namespace Staging.Core.Gaps;

/// <summary>The chamber of an end burner in balance: its throat passes as much gas as its burning face makes.</summary>
/// <remarks>
/// <para>
/// <c>rho A_b a (p/p0)^n = p A_t/c*</c>, with the characteristic velocity <c>c* = sqrt(R T)/psi(gamma)</c> and the
/// critical flow factor psi (G. P. Sutton and O. Biblarz, Rocket Propulsion Elements, 7th ed. 2001, equations 3-32 and
/// 11-4; numbers from memory). The chamber fills in some milliseconds, a web of 50 mm burns for seconds: quasi-steady.
/// </para>
/// <para>
/// Below some 1.8 times the outside pressure the throat is not choked and passes less: p A_t psi(p_a/p)/sqrt(R T), as
/// the same throat does during the run. The balance is then met above the closed form, and always above p_a.
/// </para>
/// </remarks>
internal static class ChamberBalance
{
    /// <summary>Steps by which a bracket of about twofold shrinks to round-off.</summary>
    private const int Halvings = 52;

    /// <summary>Characteristic velocity of a gas of a temperature [K] [m/s].</summary>
    public static double CharacteristicVelocity(in GasConstants gas, double temperature) =>
        Math.Sqrt(gas.R * temperature) / IsentropicFlow.CriticalFlowFactor(gas.Gamma);

    /// <summary>Absolute pressure behind a choked throat [Pa].</summary>
    /// <param name="density">Density of the propellant [kg/m3].</param>
    /// <param name="face">Burning face [m2].</param>
    /// <param name="rate">Burning rate at one atmosphere [m/s].</param>
    /// <param name="exponent">Its exponent of pressure [-], below 1.</param>
    /// <param name="characteristicVelocity">Characteristic velocity of the products [m/s].</param>
    /// <param name="throat">Throat area [m2].</param>
    public static double ChokedPressure(double density, double face, double rate, double exponent, double characteristicVelocity,
        double throat) =>
        BurnRateLaw.ReferencePressure_Pa
        * Math.Pow(density * face * rate * characteristicVelocity / (throat * BurnRateLaw.ReferencePressure_Pa), 1 / (1 - exponent));

    /// <summary>Absolute pressure behind the same throat in still air, choked or not [Pa].</summary>
    /// <param name="choked">Pressure at which the balance would be met if the throat were choked [Pa].</param>
    /// <param name="exponent">Exponent of pressure in the burning rate [-], below 1.</param>
    /// <param name="gamma">Ratio of heat capacities of the products [-].</param>
    /// <param name="outside">Pressure of the air [Pa].</param>
    public static double Pressure(double choked, double exponent, double gamma, double outside)
    {
        double low = outside, high = outside / IsentropicFlow.CriticalPressureRatio(gamma), most = IsentropicFlow.CriticalFlowFactor(gamma);
        if (choked >= high)
            return choked;
        for (int i = 0; i < Halvings; i++)
        {
            double p = 0.5 * (low + high);
            bool burnsMore = IsentropicFlow.ThroatMassFlow(outside / p, gamma) * Math.Pow(p / choked, 1 - exponent) < most;
            (low, high) = burnsMore ? (p, high) : (low, p);
        }

        return high;
    }

    /// <summary>
    /// Volume behind a spherical burning face about an ignition point on the axis of a cylindrical grain [m3].
    /// </summary>
    /// <param name="burnt">Radius of the sphere: length burnt [m].</param>
    /// <param name="radius">Radius of the grain [m].</param>
    public static double Volume(double burnt, double radius)
    {
        double wall = Math.Sqrt(Math.Max(0, (burnt - radius) * (burnt + radius)));
        return 2 * Math.PI / 3 * (burnt * burnt * burnt - wall * wall * wall);
    }

    /// <summary>
    /// Area of a spherical burning face about an ignition point on the axis, within a cylindrical grain [m2].
    /// </summary>
    /// <param name="burnt">Radius of the sphere: length burnt [m].</param>
    /// <param name="radius">Radius of the grain [m].</param>
    public static double Face(double burnt, double radius) =>
        2 * Math.PI * burnt * (burnt - Math.Sqrt(Math.Max(0, (burnt - radius) * (burnt + radius))));
}
