using Staging.Core.Gaps;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Campaign.Drawing;

/// <summary>Gaps: the starting gap of the library with every value drawn.</summary>
internal static class GapDraws
{
    /// <summary>A gap at rest or in flight; motors in contact in one of twelve.</summary>
    public static GapProblem Problem(Draws d)
    {
        var gap = new GapProblem
        {
            Design = Design(d, ""),
            Bodies = new SeparatingBodies
            {
                MassAhead = Mass.FromKilograms(d.Number("bodies.ahead", new(0.0585, 0.02, 2, 1e-3, 200_000))),
                MassBehind = Mass.FromKilograms(d.Number("bodies.behind", new(0.03, 0.015, 1, 1e-3, 200_000))),
                ClosingAcceleration = Acceleration.FromMetersPerSecondSquared(d.Number("bodies.closing", new(16, -30, 150, -1e5, 1e5))),
            },
            Surroundings = new GasState
            {
                Gas = PerfectGas.DryAir,
                Pressure = Pressure.FromPascals(d.Number("air.pressure", new(101325, 60e3, 105e3, 100, 1e6))),
                Temperature = Temperature.FromKelvins(d.Number("air.temperature", new(288.15, 250, 320, 50, 1000))),
            },
            DynamicPressure = Pressure.FromPascals(d.Number("air.dynamic", new(0, 0, 2e4, 0, 1e6))),
            Horizon = Duration.FromSeconds(d.Number("horizon", new(0.2, 0.05, 0.3, 1e-4, 10))),
            AfterOpening = Duration.FromSeconds(d.Choice("after", 3) == 0 ? 0 : d.Number("after.time", new(0.01, 0, 0.02, 0, 1))),
        };
        return d.Choice("contact", 12) == 1 ? gap.InContact(JointDraws.Tape(d, "contact.")) : gap;
    }

    /// <summary>What a builder makes, under a prefix of names.</summary>
    public static GapDesign Design(Draws d, string at)
    {
        double bore = d.Number(at + "tube.bore", new(0.018, 0.010, 0.04, 0.002, 0.2));
        double length = d.Number(at + "tube.length", new(0.12, 0.015, 0.9, 0.001, 5));
        var tube = new GuideTube { Bore = Length.FromMeters(bore), Length = Length.FromMeters(length), Steps = Steps(d, at, bore, length) };
        int jackets = Math.Max(0, d.Choice(at + "jackets", 5) - 2);
        return new GapDesign
        {
            Tube = tube,
            Vents = VentDraws.Vents(d, at, tube, jackets),
            Jackets = VentDraws.Jackets(d, at, jackets),
            DischargeLaw = VentDraws.Law(d, at),
            Source = SourceDraws.Source(d, at, bore),
            Joint = JointDraws.Joint(d, at, bore),
            Grain = Grain(d, at, bore),
            MixingAndHeat = Mixing(d, at),
        };
    }

    private static EquatableArray<BoreStep> Steps(Draws d, string at, double bore, double length)
    {
        if (d.Choice(at + "tube.stepped", 5) != 1)
            return [];
        double station = Math.Clamp(length * d.Number(at + "tube.step", new(0.5, 0.1, 0.9, 0.01, 0.99)), 0, 5);
        double other = bore * d.Number(at + "tube.step-bore", new(1.2, 0.6, 1.7, 0.05, 20));
        return [new BoreStep { Station = Length.FromMeters(station), Bore = Length.FromMeters(Math.Clamp(other, 0.002, 0.2)) }];
    }

    private static UpperGrain Grain(Draws d, string at, double bore) => new()
    {
        NozzleThroatDiameter = Length.FromMeters(Math.Clamp(
            bore * d.Number(at + "grain.throat", new(0.19, 0.12, 0.4, 0.01, 1)), 5e-4, 0.1)),
        RecessVolume = Volume.FromCubicMeters(d.Number(at + "grain.recess", new(3e-7, 5e-8, 3e-6, 1e-9, 1e-4))),
        Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(d.Number(at + "grain.conductivity", new(0.3, 0.15, 0.7, 0.05, 2))),
        Density = Density.FromKilogramsPerCubicMeter(d.Number(at + "grain.density", new(1700, 1500, 1800, 800, 2200))),
        HeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(d.Number(at + "grain.heat", new(1150, 900, 1400, 300, 3000))),
        IgnitionTemperature = Temperature.FromKelvins(d.Number(at + "grain.ignition", new(773, 650, 920, 450, 1200))),
        InitialTemperature = Temperature.FromKelvins(d.Number(at + "grain.initial", new(288.15, 260, 320, 220, 350))),
        Provenance = Invented.Here,
    };

    private static MixingAndHeat Mixing(Draws d, string at) => new()
    {
        FrontThicknessInBores = d.Number(at + "mixing.front", new(1, 0.5, 3, 0.05, 10)),
        DeadEndExchange = d.Number(at + "mixing.dead-end", new(0.5, 0.1, 1, 0, 1)),
        StirringReachInBores = d.Number(at + "mixing.reach", new(1.5, 1, 2, 0.1, 10)),
        FreeJetCoreInBores = d.Number(at + "mixing.jet", new(5.5, 5, 6.2, 1, 100)),
        WallHeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(
            d.Number(at + "mixing.wall", new(200, 100, 500, 0, 20000))),
        Emissivity = d.Number(at + "mixing.emissivity", new(0.5, 0.2, 0.9, 0, 1)),
        ParticleEfficiency = d.Number(at + "mixing.particles", new(0.25, 0.03, 0.6, 0, 1)),
        Provenance = Invented.Here,
    };
}
