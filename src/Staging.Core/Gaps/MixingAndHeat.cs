using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// What a one-dimensional model cannot compute and takes as input: mixing, heat transfer and the share of particle heat
/// that the grain keeps. Every one is an uncertain input; <see cref="Judged"/> is a visible starting set, with reasons.
/// </summary>
public sealed record MixingAndHeat
{
    /// <summary>
    /// Length over which a hole changes from drawing air to drawing products, in bores [-], 0.05 to 10.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double FrontThicknessInBores { get; init => field = Guard.In(value, 0.05, 10); }

    /// <summary>
    /// Turbulent exchange with the dead end beyond the last vent, as volume flow over (stream speed times bore area)
    /// [-], 0 to 1, for a dead end of no depth.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double DeadEndExchange { get; init => field = Guard.In(value, 0, 1); }

    /// <summary>Depth, in bores, over which the stirring of a dead end falls by e [-], 0.1 to 10.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double StirringReachInBores { get; init => field = Guard.In(value, 0.1, 10); }

    /// <summary>
    /// Free length of an opening, in bores, beyond which speed and excess temperature of a stream as dense as the air
    /// fall off as one over the length [-], 1 to 100: the core of a free jet. That of a lighter one is shorter by the
    /// root of the ratio of densities.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double FreeJetCoreInBores { get; init => field = Guard.In(value, 1, 100); }

    /// <summary>
    /// Heat transfer from the hot gas to the tube wall, without radiation [W/(m2 K)], 0 to 20000.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required HeatTransferCoefficient WallHeatTransfer { get; init => field = Guard.In(value, 0, 20000); }

    /// <summary>
    /// Emissivity of the particle-laden products, towards the grain and the walls of tube and jackets [-], 0 to 1.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double Emissivity { get; init => field = Guard.In(value, 0, 1); }

    /// <summary>Share of the heat of the impinging particles that the grain takes up [-], 0 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double ParticleEfficiency { get; init => field = Guard.In(value, 0, 1); }

    /// <summary>Where these numbers come from.</summary>
    public required Provenance Provenance { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// A judged starting set, with its reasons.
    /// Front one bore thick (range 0.5 to 3): the front mixes over about the width of its duct.
    /// Dead-end exchange 0.5 (0.1 to 1): at no depth the stream strikes the end wall, turns and leaves, so about half
    /// of it washes the wall; it falls by e in 1.5 bores (1 to 2): turbulent stirring is seen to reach one to two bores
    /// into a cavity. Free jet: core of 5.5 bores (5 to 6.2), the decay constants of speed and temperature of a round
    /// jet. Wall 200 W/(m2 K) (100 to 500): Dittus-Boelter gives 100 to 200 for Re 5000 to 10000 of products in an 18
    /// mm bore. Emissivity 0.5 (0.2 to 0.9): a cloud about one bore thick, neither thin nor black.
    /// Particle efficiency 0.25 (0.03 to 0.6): droplets of 5 micrometres before a 3.5 mm throat have a Stokes number
    /// near 0.7, so about half impinge, and about half of their heat is given up before they rebound or splash; nothing
    /// is published.
    /// </summary>
    public static MixingAndHeat Judged { get; } = new()
    {
        FrontThicknessInBores = 1,
        DeadEndExchange = 0.5,
        StirringReachInBores = 1.5,
        FreeJetCoreInBores = 5.5,
        WallHeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(200),
        Emissivity = 0.5,
        ParticleEfficiency = 0.25,
        Provenance = new Provenance
        {
            Source = "Engineering judgement; reasons and ranges in the documentation of MixingAndHeat.Judged",
            How = Evidence.Judgement,
        },
    };
}
