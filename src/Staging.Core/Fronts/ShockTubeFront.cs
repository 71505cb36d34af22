using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Fronts;

/// <summary>
/// Front travel in the other limit: hot gas at rest under pressure is released instantly into the air of a duct of the
/// same bore. A shock runs ahead, the contact surface between hot gas and air follows it, both at constant speed. Made
/// by <see cref="Between"/>.
/// </summary>
/// <remarks>
/// Shock tube: H. W. Liepmann and A. Roshko, Elements of Gasdynamics (1957), section 3.2; solved as an exact Riemann
/// problem of two gases (<see cref="RiemannSolution"/>). Reflection at a closed end: section 3.5 there. No friction, no
/// heat loss, no mixing; the driver is long enough for the end of its expansion not to catch up, x up to a few driver
/// lengths.
/// </remarks>
public sealed record ShockTubeFront
{
    private const double MaxStation_m = 100;

    private readonly double reflectedSpeed; // over the speed of sound of the air

    private ShockTubeFront(GasState driver, GasState air)
    {
        Driver = driver;
        Air = air;
        var hot = new FlowState(driver.Density.KilogramsPerCubicMeter, 0, driver.Pressure.Pascals, driver.Gas.HeatCapacityRatio);
        var cold = new FlowState(air.Density.KilogramsPerCubicMeter, 0, air.Pressure.Pascals, air.Gas.HeatCapacityRatio);
        RiemannSolution solution = RiemannProblem.Solve(hot, cold);
        double p = solution.StarPressure;
        ContactSpeed = Speed.FromMetersPerSecond(solution.ContactSpeed);
        ShockSpeed = Speed.FromMetersPerSecond(solution.RightHead);
        Pressure = Pressure.FromPascals(p);
        HotTemperature = Temperature.FromKelvins(p / (solution.LeftStarDensity * driver.Gas.Constants.R));
        AirTemperature = Temperature.FromKelvins(p / (solution.RightStarDensity * air.Gas.Constants.R));
        ShockMach = Math.Max(1, solution.RightHead / air.SoundSpeed.MetersPerSecond);
        reflectedSpeed = NormalShock.Reflected(ShockMach, air.Gas.HeatCapacityRatio).ReflectedSpeed;
    }

    /// <summary>The hot gas before release.</summary>
    public GasState Driver { get; }

    /// <summary>The air ahead of the shock.</summary>
    public GasState Air { get; }

    /// <summary>Speed of the contact surface: of the front.</summary>
    public Speed ContactSpeed { get; }

    /// <summary>Speed of the shock ahead of it.</summary>
    public Speed ShockSpeed { get; }

    /// <summary>Mach number of the shock in the air ahead [-], 1 or more.</summary>
    public double ShockMach { get; }

    /// <summary>Pressure between shock and expansion, on both sides of the front.</summary>
    public Pressure Pressure { get; }

    /// <summary>Temperature of the hot gas behind the front, cooled by its expansion.</summary>
    public Temperature HotTemperature { get; }

    /// <summary>Temperature of the air ahead of the front, heated by the shock.</summary>
    public Temperature AirTemperature { get; }

    /// <summary>Solves the shock tube.</summary>
    /// <param name="driver">The hot gas at rest.</param>
    /// <param name="air">The air at rest; its pressure is at most that of the driver.</param>
    /// <returns>The front.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The driver's pressure is below that of the air, or more than a
    /// million times it.</exception>
    public static ShockTubeFront Between(GasState driver, GasState air)
    {
        ArgumentNullException.ThrowIfNull(driver);
        ArgumentNullException.ThrowIfNull(air);
        Guard.In(driver.Pressure, air.Pressure.Pascals, 1e6 * air.Pressure.Pascals, nameof(driver));
        return new ShockTubeFront(driver, air);
    }

    /// <summary>When the front arrives at a station of a duct that is open beyond it.</summary>
    /// <param name="station">Distance from where the gases met [m], 0 to 100.</param>
    /// <returns>Time since they met; null where driver and air have one pressure, so that nothing moves.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Duration? ArrivalAt(Length station) => At(station, ContactSpeed);

    /// <summary>
    /// When the shock arrives at a station: the first disturbance there, in gas that is still cold air.
    /// </summary>
    /// <param name="station">Distance from where the gases met [m], 0 to 100.</param>
    /// <returns>Time since they met; null where driver and air have one pressure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Duration? ShockArrivalAt(Length station) => At(station, ShockSpeed);

    /// <summary>
    /// How far the front gets in a duct closed at its end before the shock reflected there meets it and nearly stops
    /// it: x = L (1 + w/W)/(1 + w/u) with contact speed u, shock speed W and speed w of the reflected shock. This is
    /// what keeps hot gas away from a closed nozzle.
    /// </summary>
    /// <param name="closedEnd">Station of the closed end [m], above 0 and at most 100.</param>
    /// <returns>
    /// The station of the front when the reflected shock meets it; the closed end is never reached by this first
    /// motion.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length StoppedBefore(Length closedEnd)
    {
        double L = Guard.Above(closedEnd.Meters, 0, MaxStation_m, "m", nameof(closedEnd));
        double u = ContactSpeed.MetersPerSecond, W = ShockSpeed.MetersPerSecond;
        double w = reflectedSpeed * Air.SoundSpeed.MetersPerSecond;
        return Length.FromMeters(L * u * (1 + w / W) / (u + w));
    }

    private static Duration? At(Length station, Speed speed)
    {
        double x = Guard.In(station, 0, MaxStation_m, nameof(station)).Meters;
        return speed.MetersPerSecond > 0 ? Duration.FromSeconds(x / speed.MetersPerSecond) : null;
    }
}
