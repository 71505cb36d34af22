namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// The gas just inside an end of the tube, velocities counted inwards, and the wave it sends back: across it velocity
/// and pressure are tied by u(p) = u + f(p), a shock above and a fan below its own pressure (Toro 2009, equations 4.6
/// and 4.7).
/// </summary>
internal readonly struct EndState(double density, double velocity, double pressure, double fraction, double gamma)
{
    public double Density { get; } = density;

    public double Velocity { get; } = velocity;

    public double Pressure { get; } = pressure;

    /// <summary>Mass fraction of products [-].</summary>
    public double Fraction { get; } = fraction;

    public double Gamma { get; } = gamma;

    public double SoundSpeed => Math.Sqrt(Gamma * Pressure / Density);

    /// <summary>
    /// The gas as it passes an end that holds nothing back: as it is where it comes faster than sound, else at the
    /// speed of sound, within the fan that it then sends back (Toro 2009, equation 4.63).
    /// </summary>
    /// <param name="heardFrom">
    /// Receives the pressure beyond the end from which on it is heard inside [Pa]: that behind a shock that stands in
    /// the end (NACA Report 1135, equation 93), or that of the gas at the speed of sound.
    /// </param>
    public EndState Unhindered(out double heardFrom)
    {
        double g = Gamma, inside = SoundSpeed;
        if (Velocity <= -inside)
        {
            double mach = Velocity / inside;
            heardFrom = Pressure * (2 * g * mach * mach - (g - 1)) / (g + 1);
            return this;
        }

        double a = Math.Max(0, (2 * inside - (g - 1) * Velocity) / (g + 1)), ratio = a / inside;
        heardFrom = Pressure * Math.Pow(ratio, 2 * g / (g - 1));
        return new EndState(Density * Math.Pow(ratio, 2 / (g - 1)), -a, heardFrom, Fraction, g);
    }

    /// <summary>The same seen from an end that moves inwards with a speed.</summary>
    public EndState From(double speed) => new(Density, Velocity - speed, Pressure, Fraction, Gamma);

    /// <summary>Velocity behind the wave that brings the gas to a pressure.</summary>
    public double VelocityAt(double p)
    {
        double g = Gamma;
        if (p >= Pressure)
            return Velocity + (p - Pressure) * Math.Sqrt(2 / ((g + 1) * Density) / (p + (g - 1) / (g + 1) * Pressure));
        return Velocity + 2 * SoundSpeed / (g - 1) * (Math.Pow(p / Pressure, (g - 1) / (2 * g)) - 1);
    }

    /// <summary>Density behind that wave.</summary>
    public double DensityAt(double p)
    {
        double ratio = p / Pressure, b = (Gamma - 1) / (Gamma + 1);
        return ratio >= 1 ? Density * (ratio + b) / (b * ratio + 1) : Density * Math.Pow(ratio, 1 / Gamma);
    }

    /// <summary>
    /// Pressure at a wall at rest: the wave stops the gas. Zero when the gas leaves faster than it can expand.
    /// </summary>
    public double WallPressure()
    {
        double u = Velocity, g = Gamma;
        if (u > 0)
            return Pressure * Math.Pow(Math.Max(0, 1 - (g - 1) / 2 * u / SoundSpeed), 2 * g / (g - 1));

        // A (p - p1)^2 = u^2 (p + B), with A = 2/((gamma + 1) rho), B = p1 (gamma - 1)/(gamma + 1).
        double A = 2 / ((g + 1) * Density), uu = u * u;
        return Pressure + (uu + Math.Sqrt(uu * (uu + 4 * A * Pressure * (2 * g / (g + 1))))) / (2 * A);
    }
}
