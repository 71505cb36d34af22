using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>The inputs of ignition: what carries a factor into the quantities of grain and closures.</summary>
internal static class IgnitionInputToSi
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<IgnitionInput> All { get; } =
    [
        Grain("Conductivity", "W/(m K)", g => g.Conductivity.WattsPerMeterKelvin, (g, k) => g with { Conductivity = k * g.Conductivity }),
        Grain("Density", "kg/m3", g => g.Density.KilogramsPerCubicMeter, (g, k) => g with { Density = k * g.Density }),
        Grain("HeatCapacity", "J/(kg K)", g => g.HeatCapacity.JoulesPerKilogramKelvin,
            (g, k) => g with { HeatCapacity = k * g.HeatCapacity }),
        Grain("IgnitionTemperature", "K", g => g.IgnitionTemperature.Kelvins,
            (g, k) => g with { IgnitionTemperature = Times(g.IgnitionTemperature, k) }),
        Grain("InitialTemperature", "K", g => g.InitialTemperature.Kelvins,
            (g, k) => g with { InitialTemperature = Times(g.InitialTemperature, k) }),
        Grain("NozzleThroatDiameter", "m", g => g.NozzleThroatDiameter.Meters,
            (g, k) => g with { NozzleThroatDiameter = k * g.NozzleThroatDiameter }),
        Grain("RecessVolume", "m3", g => g.RecessVolume.CubicMeters, (g, k) => g with { RecessVolume = k * g.RecessVolume }),
        Closure("ParticleEfficiency", "-", c => c.ParticleEfficiency, (c, k) => c with { ParticleEfficiency = k * c.ParticleEfficiency }),
        Closure("Emissivity", "-", c => c.Emissivity, (c, k) => c with { Emissivity = k * c.Emissivity }),
        Closure("DeadEndExchange", "-", c => c.DeadEndExchange, (c, k) => c with { DeadEndExchange = k * c.DeadEndExchange }),
        Closure("StirringReachInBores", "-", c => c.StirringReachInBores,
            (c, k) => c with { StirringReachInBores = k * c.StirringReachInBores }),
        Closure("FrontThicknessInBores", "-", c => c.FrontThicknessInBores,
            (c, k) => c with { FrontThicknessInBores = k * c.FrontThicknessInBores }),
        Closure("WallHeatTransfer", "W/(m2 K)", c => c.WallHeatTransfer.WattsPerSquareMeterKelvin,
            (c, k) => c with { WallHeatTransfer = k * c.WallHeatTransfer }),
    ];

    private static IgnitionInput Grain(string name, string unit, Func<UpperGrain, double> read,
        Func<UpperGrain, double, UpperGrain> scale) =>
        new("Grain." + name, unit, d => read(d.Grain), (d, k) => d with { Grain = scale(d.Grain, k) });

    private static IgnitionInput Closure(string name, string unit, Func<MixingAndHeat, double> read,
        Func<MixingAndHeat, double, MixingAndHeat> scale) =>
        new("Closures." + name, unit, d => read(d.MixingAndHeat), (d, k) => d with { MixingAndHeat = scale(d.MixingAndHeat, k) });

    private static Temperature Times(Temperature temperature, double k) => Temperature.FromKelvins(k * temperature.Kelvins);
}
