using Staging.Core.Gases;

namespace Staging.Core.Gaps;

/// <summary>How many droplets of one size strike the grain through its throat.</summary>
/// <remarks>
/// N = 1/2 (dt/D)^2 phi (1 - f) m/(pi/6 rho d^3): of a mass m of products the share 1 - f is melt and phi of that
/// flies as droplets of diameter d. One in (D/dt)^2 is aimed at the throat, were they spread evenly over the bore,
/// and half of those are taken to reach it: an even judgement between all and none. Independent of each other, at
/// least one comes with P = 1 - exp(-N). A bracket, not an estimate: phi of 0.001 to 0.1 is a judged range, nothing
/// is published, and N falls with the cube of a diameter that nobody has measured.
/// </remarks>
/// <param name="Throat">Throat diameter of the upper nozzle [m].</param>
/// <param name="Bore">Bore of the tube [m].</param>
/// <param name="CoarseShare">Share phi of the melt that flies as droplets of this size [-].</param>
/// <param name="GasFraction">Mass fraction f of the products that is gas [-].</param>
/// <param name="Density">Density of the melt [kg/m3].</param>
/// <param name="Diameter">Diameter of the droplets [m].</param>
internal readonly record struct DropletHits(
    double Throat, double Bore, double CoarseShare, double GasFraction, double Density, double Diameter)
{
    /// <summary>Share of the droplets aimed at the throat that reach it [-]: a judgement.</summary>
    private const double Reaching = 0.5;

    /// <summary>Hits expected of a mass of products [kg]; with a mass flow [kg/s], hits per second.</summary>
    public double Expected(double mass)
    {
        double aimed = Throat / Bore, droplet = Math.PI / 6 * Density * Diameter * Diameter * Diameter;
        return Reaching * aimed * aimed * CoarseShare * (1 - GasFraction) * mass / droplet;
    }

    /// <summary>Chance that at least one strikes the grain [-], of a mass of products [kg].</summary>
    public double Chance(double mass) => -NearZero.Expm1(-Expected(mass));

    /// <summary>
    /// The same for a mass flow [kg/s] that runs straight between times [s], up to one of them.
    /// </summary>
    public double Chance(ReadOnlySpan<double> times, ReadOnlySpan<double> massFlows, double until)
    {
        double mass = 0;
        for (int i = 1; i < times.Length && times[i - 1] < until; i++)
        {
            double span = times[i] - times[i - 1], share = Math.Min(1, (until - times[i - 1]) / span);
            mass += share * span * (massFlows[i - 1] + 0.5 * share * (massFlows[i] - massFlows[i - 1]));
        }

        return Chance(mass);
    }
}
