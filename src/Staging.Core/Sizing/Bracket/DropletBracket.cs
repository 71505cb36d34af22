using Staging.Core.Gaps;

namespace Staging.Core.Sizing;

/// <summary>What hot droplets might do ahead of gas and pieces: a bracket, reported and never counted.</summary>
internal readonly struct DropletBracket
{
    /// <summary>
    /// A coarse droplet of melt: 0.1 mm, 2100 kg/m3 and 1500 J/(kg K) of molten salts (from memory), emissivity 0.8.
    /// </summary>
    private const double Diameter = 1e-4, Density = 2100, HeatCapacity = 1500, Emissivity = 0.8;

    /// <summary>Share of the melt that flies so coarse [-]: a judged range, nothing is published.</summary>
    private const double MinShare = 0.001, MaxShare = 0.1;

    private readonly DropletArrival? arrival;
    private readonly double min;
    private readonly double max;

    public DropletBracket(GapProblem problem, GapSource.EndBurner motor, BurnThroughEstimate estimate)
    {
        GapDesign design = problem.Design;
        double air = problem.Surroundings.Temperature.Kelvins, mass = estimate.PieceMass.Kilograms;
        arrival = DropletFlight.To(
            new Droplet(Diameter, Density, HeatCapacity, Emissivity, motor.FlameTemperature.Kelvins, estimate.FastSpeed.MetersPerSecond),
            new DropletGas(problem.Surroundings.Pressure.Pascals, air, 0, air), design.Tube.Length.Meters);
        (min, max) = (Chance(MinShare), Chance(MaxShare));

        double Chance(double share) => new DropletHits(design.Grain.NozzleThroatDiameter.Meters, design.Tube.Bore.Meters, share,
            motor.Products.GasMassFraction, Density, Diameter).Chance(mass);
    }

    public override string ToString() => arrival is { } a
        ? Invariant.Text($"Droplets of 0.1 mm, if there are any, come after {a.Time * 1e3:F1} ms at {a.Temperature:F0} K; at least one "
            + $"strikes the grain with {100 * min:F0} % to {100 * max:F0} %. "
            + $"Whether one lights it is not known, so they count for nothing here.")
        : "Droplets of 0.1 mm come to rest on the way.";
}
