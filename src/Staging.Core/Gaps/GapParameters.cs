using Staging.Core.Discharge;
using Staging.Core.Gases;

namespace Staging.Core.Gaps;

/// <summary>A gap problem as plain SI numbers, ready for the right-hand side. See <see cref="GapLowering"/>.</summary>
internal sealed class GapParameters
{
    /// <summary>Products of combustion, gas and particles in equilibrium.</summary>
    public required GasConstants Products { get; init; }

    /// <summary>Mass fraction of the products that is particles [-].</summary>
    public required double ParticleFraction { get; init; }

    /// <summary>Heat capacity of the particles [J/(kg K)].</summary>
    public required double ParticleHeatCapacity { get; init; }

    public required double FlameTemperature { get; init; }

    public required double ChamberVolume { get; init; }

    public required double ChamberPressure { get; init; }

    /// <summary>The forward opening, fully open.</summary>
    public required OrificeSize Opening { get; init; }

    public required IDischargeLaw OpeningLaw { get; init; }

    public required double OpeningTime { get; init; }

    /// <summary>The booster's nozzle throat.</summary>
    public required OrificeSize Nozzle { get; init; }

    public required double FragmentMass { get; init; }

    public required double FragmentBurnTime { get; init; }

    public required double Bore { get; init; }

    public required double BoreArea { get; init; }

    /// <summary>Station of the last vent [m]: the stream goes no further.</summary>
    public required double LastVent { get; init; }

    /// <summary>Volume beyond the last vent, recess included [m3].</summary>
    public required double DeadEndVolume { get; init; }

    /// <summary>Share of the stream's stirring that reaches the nozzle plane through the dead end [-]: exp(-depth/reach).</summary>
    public required double StirringAtNozzle { get; init; }

    public required double DeadEndExchange { get; init; }

    public required double FrontThickness { get; init; }

    public required double WallHeatTransfer { get; init; }

    public required VentParameters[] Vents { get; init; }

    public required IDischargeLaw Law { get; init; }

    public required double JointArea { get; init; }

    public required double Breakaway { get; init; }

    public required double Sliding { get; init; }

    public required double Engagement { get; init; }

    /// <summary>Mass ahead times mass behind over their sum [kg].</summary>
    public required double ReducedMass { get; init; }

    public required double ClosingAcceleration { get; init; }

    /// <summary>The tape over the seam; null where there is none.</summary>
    public required FilmParameters? Film { get; init; }

    /// <summary>How long the gap is followed once the joint has opened [s].</summary>
    public required double AfterOpening { get; init; }

    public required double OutsidePressure { get; init; }

    public required double OutsideTemperature { get; init; }

    public required GasConstants Air { get; init; }

    public required double Horizon { get; init; }

    public required GrainParameters Grain { get; init; }

    /// <summary>Length of the state vector.</summary>
    public int StateCount => FirstLayer + (Film is null ? 0 : FilmParameters.Layers);

    /// <summary>Where the layers of the film begin in the state vector.</summary>
    public static int FirstLayer => GapState.Count;
}
