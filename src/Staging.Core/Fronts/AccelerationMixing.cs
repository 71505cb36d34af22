using UnitsNet;

namespace Staging.Core.Fronts;

/// <summary>
/// Mixing because light gas pushes heavy: while the front speeds up, the hot gas behind it is the lighter of two fluids
/// under an acceleration towards the heavier, which is unstable (Rayleigh-Taylor). While it slows down the front is
/// stable, and nothing is added.
/// </summary>
/// <remarks>
/// Depth of the bubbles h = alpha A g t^2 with the Atwood number A = (rho_air - rho_hot)/(rho_air + rho_hot); D. L.
/// Youngs, "Numerical simulation of turbulent mixing by Rayleigh-Taylor instability", Physica D 12 (1984) 32-44; alpha
/// 0.05 to 0.07 in experiments; from memory. Under even acceleration g t^2 is twice the way, so the depth is a fixed
/// share of it, about a tenth.
/// </remarks>
public static class AccelerationMixing
{
    /// <summary>Atwood number of a front [-].</summary>
    /// <param name="air">Density of the air ahead [kg/m3], 1e-4 to 1000.</param>
    /// <param name="hot">Density of the gas behind [kg/m3], 1e-4 to 1000.</param>
    /// <returns>(rho_air - rho_hot)/(rho_air + rho_hot) [-], -1 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double Atwood(Density air, Density hot)
    {
        double a = Guard.In(air, 1e-4, 1000, nameof(air)).KilogramsPerCubicMeter,
            h = Guard.In(hot, 1e-4, 1000, nameof(hot)).KilogramsPerCubicMeter;
        return (a - h) / (a + h);
    }

    /// <summary>
    /// Depth to which the hot gas bubbles into the air during a way under even acceleration, 2 alpha A x.
    /// </summary>
    /// <param name="accelerated">Way over which the front speeds up [m], 0 to 100.</param>
    /// <param name="atwood">Atwood number [-], -1 to 1; at 0 or below the front is stable.</param>
    /// <param name="growth">alpha [-], 0.01 to 0.2; 0.06 is in the middle of what experiments give.</param>
    /// <returns>The depth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static Length DepthAfter(Length accelerated, double atwood, double growth)
    {
        double x = Guard.In(accelerated, 0, 100, nameof(accelerated)).Meters;
        double A = Guard.In(atwood, -1, 1, "-", nameof(atwood)), alpha = Guard.In(growth, 0.01, 0.2, "-", nameof(growth));
        return Length.FromMeters(2 * alpha * Math.Max(0, A) * x);
    }
}
