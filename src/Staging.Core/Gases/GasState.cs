using UnitsNet;

namespace Staging.Core.Gases;

/// <summary>A gas at rest: which gas, at what absolute pressure and temperature.</summary>
public sealed record GasState
{
    /// <summary>The gas.</summary>
    public required PerfectGas Gas { get; init => field = Guard.NotNull(value); }

    /// <summary>Absolute pressure [Pa], 1 Pa to 1 GPa.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Pressure Pressure { get; init => field = Guard.In(value, 1, 1e9); }

    /// <summary>Absolute temperature [K], 50 to 6000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature Temperature { get; init => field = Guard.In(value, 50, 6000); }

    /// <summary>Density of the state.</summary>
    public Density Density => Gas.DensityAt(Pressure, Temperature);

    /// <summary>Speed of sound of the state.</summary>
    public Speed SoundSpeed => Gas.SoundSpeedAt(Temperature);
}
