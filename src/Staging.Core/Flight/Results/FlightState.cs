using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>One body at one moment.</summary>
public sealed class FlightState
{
    private readonly double time, height, velocity, mass, thrust;

    internal FlightState(double time, double height, double velocity, double mass, double thrust) =>
        (this.time, this.height, this.velocity, this.mass, this.thrust) = (time, height, velocity, mass, thrust);

    /// <summary>Time from ignition of the lowest stage [s].</summary>
    public Duration Time => Duration.FromSeconds(time);

    /// <summary>Height above the site [m].</summary>
    public Length Height => Length.FromMeters(height);

    /// <summary>
    /// Velocity [m/s]: along the launch direction on the way up, vertical on the way down; upwards positive.
    /// </summary>
    public Speed Velocity => Speed.FromMetersPerSecond(velocity);

    /// <summary>Mass of the body [kg].</summary>
    public Mass Mass => Mass.FromKilograms(mass);

    /// <summary>Thrust of its motors [N].</summary>
    public Force Thrust => Force.FromNewtons(thrust);

    /// <summary>Kinetic energy [J].</summary>
    public Energy KineticEnergy => Energy.FromJoules(0.5 * mass * velocity * velocity);

    /// <summary>The state on one line.</summary>
    /// <returns>Time, height, velocity, mass and thrust with their units.</returns>
    public override string ToString() =>
        Invariant.Text($"{time:F3} s: {height:F1} m, {velocity:F1} m/s, {mass * 1e3:F1} g, {thrust:F1} N");
}
