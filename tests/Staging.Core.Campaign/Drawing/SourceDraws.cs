using Staging.Core.Gaps;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Campaign.Drawing;

/// <summary>Where the hot gas comes from: an end burner, a motor with a stated pulse or by a rate law, a table, a cluster.</summary>
internal static class SourceDraws
{
    public static GapSource Source(Draws d, string at, double bore)
    {
        DustyGas products = Products(d, at);
        return d.Choice(at + "source", 8) switch
        {
            1 or 2 => Booster(d, at + "motor.", products, bore),
            3 => Table(d, at, products),
            4 => Cluster(d, at, products, bore),
            _ => EndBurner(d, at + "motor.", products, bore),
        };
    }

    private static DustyGas Products(Draws d, string at) => new()
    {
        Name = "drawn products",
        Gas = new PerfectGas
        {
            Name = "drawn gas",
            GasConstant = SpecificEntropy.FromJoulesPerKilogramKelvin(d.Number(at + "gas.constant", new(234, 200, 280, 10, 5000))),
            HeatCapacityRatio = d.Number(at + "gas.gamma", new(1.21, 1.18, 1.26, 1.01, 5.0 / 3)),
            Provenance = Invented.Here,
        },
        GasMassFraction = d.Number(at + "gas.share", new(0.65, 0.45, 0.7, 0.2, 1)),
        ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(d.Number(at + "gas.particles", new(1200, 900, 1500, 100, 5000))),
        Provenance = Invented.Here,
    };

    private static GapSource.Motor Motor(Draws d, string at, DustyGas products, double bore) =>
        d.Choice(at + "kind", 2) == 0 ? EndBurner(d, at, products, bore) : Booster(d, at, products, bore);

    private static GapSource.EndBurner EndBurner(Draws d, string at, DustyGas products, double bore)
    {
        double grain = Math.Clamp(bore * d.Number(at + "grain", new(0.83, 0.6, 1, 0.1, 5)), 0.003, 0.15);
        return new GapSource.EndBurner
        {
            Products = products,
            FlameTemperature = Flame(d, at),
            GrainDiameter = Length.FromMeters(grain),
            BurntLength = Length.FromMeters(d.Number(at + "burnt", new(0.04, 0.01, 0.08, 0.003, 0.5))),
            NozzleThroatDiameter = Length.FromMeters(
                Math.Clamp(grain * d.Number(at + "throat", new(0.227, 0.18, 0.32, 0.02, 0.9)), 3e-4, 0.1)),
            Density = Density.FromKilogramsPerCubicMeter(d.Number(at + "density", new(1700, 1500, 1800, 500, 3000))),
            Rate = Rate(d, at),
            Strength = Pressure.FromPascals(d.Number(at + "strength", new(5e6, 2e6, 1e7, 2e5, 1e8))),
            PlateFactor = d.Number(at + "plate", new(1, 0.75, 1.24, 0.5, 1.5)),
            RadialCracks = d.Number(at + "cracks", new(4, 3, 6, 1, 20)),
            SpeedShare = d.Number(at + "speed-share", new(0.5, 0, 1, 0, 1)),
            PieceSpeed = d.Choice(at + "states-speed", 4) == 1
                ? Speed.FromMetersPerSecond(d.Number(at + "speed", new(40, 5, 150, 0, 500)))
                : null,
            FreshFaceDelay = Duration.FromSeconds(d.Number(at + "fresh", new(0.02, 0.005, 0.08, 0, 10))),
            OpeningCoefficient = d.Number(at + "coefficient", new(0.8, 0.6, 0.95, 0.3, 1)),
            Delay = Delay(d, at),
            Provenance = Invented.Here,
        };
    }

    private static GapSource.Booster Booster(Draws d, string at, DustyGas products, double bore) => new()
    {
        Products = products,
        FlameTemperature = Flame(d, at),
        ChamberVolume = Volume.FromCubicMeters(d.Number(at + "volume", new(5e-6, 1e-6, 2e-5, 1e-8, 0.01))),
        ChamberPressure = Pressure.FromPascals(d.Number(at + "pressure", new(5e5, 2.5e5, 1.5e6, 1e4, 2e7))),
        OpeningDiameter = Length.FromMeters(Math.Clamp(bore * d.Number(at + "opening", new(0.5, 0.3, 0.8, 0.02, 2)), 5e-4, 0.2)),
        OpeningTime = Duration.FromSeconds(d.Number(at + "opening-time", new(1e-3, 3e-4, 3e-3, 1e-6, 1))),
        OpeningCoefficient = d.Number(at + "coefficient", new(0.8, 0.6, 0.95, 0.3, 1)),
        NozzleThroatDiameter = Length.FromMeters(d.Number(at + "nozzle", new(0.0034, 0.002, 0.006, 0, 0.1))),
        Web = Web(d, at),
        Delay = Delay(d, at),
        Provenance = Invented.Here,
    };

    private static WebBurn Web(Draws d, string at)
    {
        var mass = Mass.FromKilograms(d.Number(at + "web", new(2e-4, 5e-5, 1e-3, 0, 0.1)));
        return d.Choice(at + "by-rate", 2) == 0
            ? new WebBurn.OverTime
            {
                Mass = mass,
                Time = Duration.FromSeconds(d.Number(at + "web-time", new(0.025, 8e-3, 0.045, 1e-4, 10))),
            }
            : new WebBurn.ByRateLaw
            {
                Mass = mass,
                Thickness = Length.FromMeters(d.Number(at + "thickness", new(5e-4, 2e-4, 1.2e-3, 1e-5, 0.02))),
                Rate = Rate(d, at),
            };
    }

    private static BurnRateLaw Rate(Draws d, string at) => new()
    {
        RateAtOneAtmosphere = Speed.FromMetersPerSecond(d.Number(at + "rate", new(0.0122, 0.008, 0.02, 1e-4, 1))),
        PressureExponent = d.Number(at + "exponent", new(0.24, 0, 0.5, 0, 1)),
        Provenance = Invented.Here,
    };

    private static GapSource.Cluster Cluster(Draws d, string at, DustyGas products, double bore)
    {
        int motors = d.Count(at + "motors", new(2, 2, 4, 2, 8));
        return new GapSource.Cluster { Motors = [.. Enumerable.Range(1, motors).Select(i => Motor(d, $"{at}motor{i}.", products, bore))] };
    }

    private static GapSource.Tabulated Table(Draws d, string at, DustyGas products)
    {
        double end = d.Number(at + "table.end", new(0.03, 0.01, 0.1, 1e-5, 10));
        double peak = d.Number(at + "table.flow", new(0.01, 1e-3, 0.05, 0, 10));
        double hot = d.Number(at + "table.temperature", new(1800, 1400, 2200, 250, 3500));
        double rise = end * d.Number(at + "table.rise", new(0.2, 0.05, 0.6, 0.001, 0.99));
        double[] temperature = [hot, hot, Math.Max(250, 0.8 * hot)];
        return GapSource.Tabulated.FromColumns(products, [0, rise, end], [0, peak, 0.1 * peak], temperature, Invented.Here);
    }

    private static Temperature Flame(Draws d, string at) =>
        Temperature.FromKelvins(d.Number(at + "flame", new(1890, 1600, 2300, 800, 3500)));

    private static Duration Delay(Draws d, string at) =>
        Duration.FromSeconds(d.Choice(at + "late", 5) == 1 ? d.Number(at + "delay", new(0.005, 0, 0.05, 0, 10)) : 0);
}
