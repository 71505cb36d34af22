using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>The state of a gap at one moment. Made by <see cref="GapRun.At"/>.</summary>
/// <remarks>Immutable; may be read from any thread.</remarks>
public sealed class GapSnapshot
{
    private readonly GapReading reading;

    internal GapSnapshot(Duration time, in GapReading reading)
    {
        Time = time;
        this.reading = reading;
    }

    /// <summary>Time since burn-through.</summary>
    public Duration Time { get; }

    /// <summary>Absolute pressure in the gap.</summary>
    public Pressure GapPressure => Pressure.FromPascals(reading[GapChannel.GapPressure]);

    /// <summary>
    /// Absolute pressure in the booster's chamber: the highest in a cluster, that of the gap where the source has no
    /// chamber.
    /// </summary>
    public Pressure ChamberPressure => Pressure.FromPascals(reading[GapChannel.ChamberPressure]);

    /// <summary>Absolute pressures in the jackets, in the order of <see cref="GapDesign.Jackets"/>.</summary>
    public ImmutableArray<Pressure> JacketPressures => [.. reading.JacketPressures.Select(x => Pressure.FromPascals(x))];

    /// <summary>
    /// Distance of the front from the booster motor's forward end; for a stirred gap see
    /// <see cref="GapModel.WellStirred"/>.
    /// </summary>
    public Length Front => Length.FromMeters(reading[GapChannel.Front]);

    /// <summary>Temperature of the products behind the front; of the mixture in a stirred gap.</summary>
    public Temperature HotTemperature => Temperature.FromKelvins(reading[GapChannel.HotTemperature]);

    /// <summary>Temperature of the gas at the upper nozzle.</summary>
    public Temperature NozzleTemperature => Temperature.FromKelvins(reading[GapChannel.NozzleTemperature]);

    /// <summary>Mass fraction of products at the upper nozzle [-], 0 to 1.</summary>
    public double ProductsAtNozzle => reading[GapChannel.ProductsAtNozzle];

    /// <summary>Temperature of the grain surface.</summary>
    public Temperature GrainSurface => Temperature.FromKelvins(reading[GapChannel.GrainSurface]);

    /// <summary>Travel of the joint.</summary>
    public Length JointTravel => Length.FromMeters(reading[GapChannel.JointTravel]);

    /// <summary>Heat flux into the grain from the gas stream.</summary>
    public HeatFlux Convection => HeatFlux.FromWattsPerSquareMeter(reading[GapChannel.Convection]);

    /// <summary>Heat flux into the grain by radiation.</summary>
    public HeatFlux Radiation => HeatFlux.FromWattsPerSquareMeter(reading[GapChannel.Radiation]);

    /// <summary>Heat flux into the grain from impinging particles.</summary>
    public HeatFlux Particles => HeatFlux.FromWattsPerSquareMeter(reading[GapChannel.Particles]);

    /// <summary>The main numbers.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Invariant.Text($"{Time.Milliseconds:F2} ms: gap {GapPressure.Kilopascals:F1} kPa, chamber "
        + $"{ChamberPressure.Kilopascals:F1} kPa, front at {Front.Millimeters:F1} mm, nozzle gas {NozzleTemperature.Kelvins:F0} K, "
        + $"grain surface {GrainSurface.Kelvins:F0} K, joint travel {JointTravel.Millimeters:F2} mm.");
}
