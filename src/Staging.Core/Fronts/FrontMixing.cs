using UnitsNet;

namespace Staging.Core.Fronts;

/// <summary>
/// How thick the mixing zone between hot gas and air grows. Thickness means the length over which the mean share of
/// products in the cross-section falls from 90 to 10 %.
/// </summary>
/// <remarks>
/// Two closed forms bound it. Once the stream has mixed across the bore many times, turbulent dispersion spreads the
/// front like diffusion with K = 10.1 a u* (G. I. Taylor, "The dispersion of matter in turbulent flow through a pipe",
/// Proc. R. Soc. A 223 (1954) 446-468, from memory), a the radius, u* = U sqrt(f/8): a variance 2 K t = 10.1 sqrt(f/8)
/// D x, whatever the speed history. Before that the middle of the stream runs ahead of its mean by the shape of the
/// profile: with the 1/7 power law by 60/49 - 1 = 22 % of the distance (H. Schlichting, Boundary-Layer Theory, pipe
/// flow; from memory). The lesser of the two is taken.
/// <para>
/// While the front accelerates, light gas also pushes heavy gas, which is unstable (Rayleigh-Taylor); while it
/// decelerates nothing is added. Depth of the bubbles h = alpha A g t^2 with the Atwood number A = (rho_air -
/// rho_hot)/(rho_air + rho_hot); D. L. Youngs, "Numerical simulation of turbulent mixing by Rayleigh-Taylor
/// instability", Physica D 12 (1984) 32-44; alpha 0.05 to 0.07 in experiments; from memory. Under constant acceleration
/// g t^2 is twice the distance travelled, so the depth is a fixed share of it, about a tenth.
/// </para>
/// </remarks>
public sealed record FrontMixing
{
    /// <summary>Constant of turbulent dispersion [-] (Taylor 1954).</summary>
    private const double Taylor = 10.1;

    /// <summary>10 to 90 % of an error function, in standard deviations: twice 1.281552.</summary>
    private const double TenToNinety = 2.563103131089201;

    /// <summary>Speed in the middle over the mean, less 1, of the 1/7 power law [-]: (8 x 15)/(2 x 49) - 1.</summary>
    private const double ProfileExcess = 60.0 / 49 - 1;

    /// <summary>Darcy friction factor f of the bore [-], 0.005 to 0.2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double FrictionFactor { get; init => field = Guard.In(value, 0.005, 0.2); }

    /// <summary>Where the friction factor comes from.</summary>
    public required Provenance Provenance { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// Friction factor 0.03, an engineering judgement: a smooth tube has 0.026 at a Reynolds number of 20000 (cold air
    /// at 20 m/s in 18 mm) and 0.040 at 4000 (products), by f = 0.3164 Re^-0.25 (H. Blasius 1913). The thickness goes
    /// with its fourth root, so it hardly matters.
    /// </summary>
    public static FrontMixing Judged { get; } = new()
    {
        FrictionFactor = 0.03,
        Provenance = new Provenance
        {
            Source = "Engineering judgement between 0.026 (air) and 0.040 (products) of a smooth tube by the law of Blasius (1913)",
            How = Evidence.Judgement,
        },
    };

    /// <summary>Thickness of the mixing zone after a distance travelled.</summary>
    /// <param name="travelled">Distance travelled by the front [m], 0 to 100.</param>
    /// <param name="bore">Inner diameter [m], 1 mm to 1 m.</param>
    /// <returns>Thickness from 90 to 10 % products.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public Length ThicknessAfter(Length travelled, Length bore) =>
        Length.FromMeters(Thickness(Guard.In(travelled, 0, 100, nameof(travelled)).Meters, Guard.In(bore, 1e-3, 1, nameof(bore)).Meters));

    /// <summary>
    /// The distance after which the stream has mixed across the bore and dispersion takes over from the profile.
    /// </summary>
    /// <param name="bore">Inner diameter [m], 1 mm to 1 m.</param>
    /// <returns>The distance at which both closed forms agree.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length DispersionTakesOverAt(Length bore)
    {
        double perRoot = TenToNinety / ProfileExcess;
        return Length.FromMeters(perRoot * perRoot * Variance * Guard.In(bore, 1e-3, 1, nameof(bore)).Meters);
    }

    /// <summary>Coefficient of turbulent dispersion, 10.1 a U sqrt(f/8).</summary>
    /// <param name="bore">Inner diameter [m], 1 mm to 1 m.</param>
    /// <param name="speed">Mean speed [m/s], 0 to 2000.</param>
    /// <returns>K, as a kinematic coefficient.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public KinematicViscosity DispersionAt(Length bore, Speed speed) => KinematicViscosity.FromSquareMetersPerSecond(
        0.5 * Variance * Guard.In(bore, 1e-3, 1, nameof(bore)).Meters * Guard.In(speed, 0, 2000, nameof(speed)).MetersPerSecond);

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
    /// Depth to which the hot gas penetrates the air as bubbles over a distance at constant acceleration, 2 alpha A x.
    /// </summary>
    /// <param name="accelerated">Distance over which the front accelerates [m], 0 to 100.</param>
    /// <param name="atwood">Atwood number [-], -1 to 1; at 0 or below the front is stable.</param>
    /// <param name="growth">alpha [-], 0.01 to 0.2; 0.06 is in the middle of what experiments give.</param>
    /// <returns>The depth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static Length AccelerationDepth(Length accelerated, double atwood, double growth)
    {
        double x = Guard.In(accelerated, 0, 100, nameof(accelerated)).Meters;
        double A = Guard.In(atwood, -1, 1, "-", nameof(atwood)), alpha = Guard.In(growth, 0.01, 0.2, "-", nameof(growth));
        return Length.FromMeters(2 * alpha * Math.Max(0, A) * x);
    }

    /// <summary>Variance over bore times distance [-]: 2 K/(U D) = 10.1 sqrt(f/8).</summary>
    private double Variance => Taylor * Math.Sqrt(FrictionFactor / 8);

    internal double Thickness(double x, double bore) => Math.Min(ProfileExcess * x, TenToNinety * Math.Sqrt(Variance * bore * x));
}
