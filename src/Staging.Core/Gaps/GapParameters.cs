using Staging.Core.Discharge;
using Staging.Core.Gases;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>A gap problem as plain SI numbers, ready for the right-hand side. See <see cref="GapToSi"/>.</summary>
internal sealed class GapParameters
{
    /// <summary>
    /// Length of the first slab as a share of the bore [-], thinner than the wall of any tube, and of the tube at most.
    /// </summary>
    private const double FirstSlab = 1e-3, FirstSlabOfTube = 0.1;

    /// <summary>Whether hot and cold gas of the tube are one parcel.</summary>
    public required bool Stirred { get; init; }

    /// <summary>Products of combustion, gas and particles in equilibrium.</summary>
    public required GasConstants Products { get; init; }

    /// <summary>Mass fraction of the products that is particles [-].</summary>
    public required double ParticleFraction { get; init; }

    /// <summary>Heat capacity of the particles [J/(kg K)].</summary>
    public required double ParticleHeatCapacity { get; init; }

    /// <summary>Chambers that open into the tube.</summary>
    public required ChamberParameters[] Chambers { get; init => (field, ThrowsPieces) = (value, value.Any(c => c.Pieces is not null)); }

    /// <summary>Whether a chamber throws burning pieces up the tube.</summary>
    public bool ThrowsPieces { get; private init; }

    /// <summary>What is fed into the tube at station 0 as known beforehand; null where nothing is.</summary>
    public required FeedParameters? Feed { get; init; }

    public required BoreProfile Profile { get; init; }

    /// <summary>Length of the tube, from the booster's forward end to the nozzle plane [m].</summary>
    public required double TubeLength { get; init; }

    /// <summary>Bore at the last vent [m].</summary>
    public required double Bore { get; init; }

    /// <summary>Cross-section of the tube at the last vent [m2].</summary>
    public required double BoreArea { get; init; }

    /// <summary>Station at which the front has passed the last vent [m]: the stream goes no further.</summary>
    public required double LastVent { get; init; }

    /// <summary>
    /// Length of the slab of air that the first products mix into [m]. A parcel needs some gas to have a temperature,
    /// so it gives nothing of this.
    /// </summary>
    public double FirstReach => Math.Min(FirstSlab * Profile.FirstBore, FirstSlabOfTube * LastVent);

    /// <summary>
    /// Share of the stirring of a stream that ends at the last vent which reaches the nozzle plane [-]; zero without
    /// vents.
    /// </summary>
    public required double LastStirring { get; init; }

    /// <summary>Volume of the tube up to the last vent [m3].</summary>
    public required double TubeVolume { get; init; }

    /// <summary>Volume beyond the last vent, recess included [m3].</summary>
    public required double DeadEndVolume { get; init; }

    /// <summary>Depth of the dead end, from the uppermost holes to the nozzle plane [m].</summary>
    public required double DeadEndDepth { get; init; }

    /// <summary>Wall of the dead end [m2].</summary>
    public required double DeadEndWall { get; init; }

    public required double DeadEndExchange { get; init; }

    /// <summary>
    /// Free length, in bores, of all openings to the outside that the stream crosses; zero where it is too short to
    /// matter.
    /// </summary>
    public required double FreeLength { get; init; }

    /// <summary>
    /// Core of a free jet as dense as the air, in bores, or in diameters of the opening that it comes from [-].
    /// </summary>
    public required double JetCore { get; init; }

    /// <summary>Length over which the last vent changes from air to products [m].</summary>
    public required double FrontThickness { get; init; }

    /// <summary>Heat that the gas gives to the walls of tube and jackets.</summary>
    public required WallExchange Walls { get; init; }

    public required VentParameters[] Vents { get; init; }

    public required JacketParameters[] Jackets { get; init; }

    public required IDischargeLaw Law { get; init; }

    public required double JointArea { get; init; }

    public required double Breakaway { get; init; }

    public required double Sliding { get; init; }

    public required double Engagement { get; init; }

    /// <summary>Mass ahead times mass behind over their sum [kg].</summary>
    public required double ReducedMass { get; init; }

    public required double ClosingAcceleration { get; init; }

    public required double OutsidePressure { get; init; }

    public required double OutsideTemperature { get; init; }

    public required GasConstants Air { get; init; }

    /// <summary>Still air outside.</summary>
    public required Zone<Real> Outside { get; init; }

    public required double Horizon { get; init; }

    public required GrainParameters Grain { get; init; }

    /// <summary>When the last source of known duration ends [s].</summary>
    public required double KnownSourceEnd { get; init; }

    /// <summary>The tape over the seam of the joint; null where there is none.</summary>
    public required FilmParameters? Film { get; init; }

    /// <summary>How long the gap is followed once the joint has opened [s].</summary>
    public required double AfterOpening { get; init; }

    /// <summary>Where the shares of their way that pieces have left begin in the state vector.</summary>
    public required int FirstWay { get; init; }

    /// <summary>Where the layers of the film begin in the state vector: behind the ways.</summary>
    public required int FirstLayer { get; init; }

    /// <summary>Length of the state vector.</summary>
    public int StateCount => FirstLayer + (Film is null ? 0 : FilmParameters.Layers);

    /// <summary>Where parcels of chambers and jackets begin in the state vector; shares follow them.</summary>
    public int FirstJacket => StateLayout.FirstChamber + StateLayout.Parcel * Chambers.Length;

    /// <summary>
    /// Where the shares that burn down by the pressure begin in the state vector: of fragments, pieces and rings.
    /// </summary>
    public int FirstShare => FirstJacket + StateLayout.Parcel * Jackets.Length;
}
