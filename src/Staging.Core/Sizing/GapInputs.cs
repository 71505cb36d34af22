using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>
/// Uncertain inputs of a gap, by name, for studies. Each is one lambda: write your own in the same way where one is
/// missing.
/// </summary>
public static partial class GapInputs
{
    /// <summary>Name of the breakaway force.</summary>
    internal const string BreakawayPath = "joint.breakaway";

    /// <summary>
    /// Every input that <see cref="StartingGaps.Bore18mm"/> and <see cref="MixingAndHeat.Judged"/> give with a judged
    /// range, over that range: a start, to be narrowed by what you measure.
    /// </summary>
    /// <remarks>
    /// Held are the density of the grain, whose published range is narrow, and temperature and heat capacities of the
    /// products: they belong to one composition, and their ranges do not combine freely with that of the gas fraction
    /// (see <see cref="Gases.BlackPowderProducts"/>).
    /// </remarks>
    public static ImmutableArray<StudyInput<GapProblem>> Judged { get; } = JudgedFor(StartingGaps.Bore18mm.Design);

    /// <summary>Why those ranges.</summary>
    public static Provenance JudgedSource { get; } = new()
    {
        Source = "Retention 10 to 60 N: not published; leak 0 to 20 mm2: a guess; strength 2 to 10 MPa: bounded, no measurement found; "
            + "speed of the pieces: anywhere between its two bounds; fresh faces lit after 5 to 80 ms: time to light a grain in "
            + "products of 1000 to 1800 K; burning rate 12.1 to 17.2 mm/s: the two published laws; cracks 3 to 6: a guess; of a motor "
            + "with a stated pulse, fragments: published burn rates differ by 40 %, the last web by as much, opening 6 to 12 mm "
            + "within 0.3 to 3 ms: most of the grain, at once; gas fraction 0.55 to 0.7: hot products by equilibrium; ignition 650 to "
            + "920 K: within milliseconds by one-step kinetics fitted to hot-bath tests; conductivity 0.15 to 0.7 W/(m K): no "
            + "measurement found; particle efficiency: a guess over its whole range; wall, emissivity, front, dead end and free jet: "
            + "the ranges of MixingAndHeat.Judged",
        How = Evidence.Judgement,
    };

    /// <summary>The judged inputs that a gap has: those of its kind of source, and those that every gap has.</summary>
    /// <param name="design">The gap.</param>
    /// <returns>
    /// The inputs, each over its judged range. Of the source a known history and a cluster have the gas fraction only.
    /// A joint without friction has no breakaway force.
    /// </returns>
    public static ImmutableArray<StudyInput<GapProblem>> JudgedFor(GapDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return
        [
            .. OfJoint(design.Joint.Coupler),
            Leak(Distribution.Triangular(0, 2, 20)),
            .. JudgedOf(design.Source),
            IgnitionTemperature(Distribution.Uniform(JudgedRanges.MinIgnition, JudgedRanges.MaxIgnition)),
            Conductivity(Distribution.Triangular(0.15, 0.3, 0.7)),
            ParticleEfficiency(Distribution.Triangular(
                JudgedRanges.MinParticleEfficiency, MixingAndHeat.Judged.ParticleEfficiency, JudgedRanges.MaxParticleEfficiency)),
            WallHeatTransfer(Distribution.Triangular(100, 200, 500)),
            Emissivity(Distribution.Triangular(0.2, 0.5, 0.9)),
            FrontThickness(Distribution.Triangular(0.5, 1, 3)),
            DeadEndExchange(Distribution.Triangular(0.1, 0.5, 1)),
            StirringReach(Distribution.Triangular(1, 1.5, 2)),
            FreeJetCore(Distribution.Triangular(5, 5.5, 6.2)),
        ];
    }

    /// <summary>A joint without friction has none that could scatter.</summary>
    private static ImmutableArray<StudyInput<GapProblem>> OfJoint(FrictionJoint coupler) =>
        coupler.BreakawayForce.Newtons > 0 ? [Breakaway(Distribution.Triangular(10, 20, 60))] : [];

    /// <summary>The breakaway force of the joint; the sliding force keeps its ratio to it.</summary>
    /// <param name="spread">How it scatters [N].</param>
    /// <returns>The input <c>joint.breakaway</c>.</returns>
    public static StudyInput<GapProblem> Breakaway(Distribution spread) =>
        new StudyInput<GapProblem>(BreakawayPath, "N", spread, WithBreakaway);

    /// <summary>
    /// Clearance past coupler and motor through which the gap leaks; 0 to 20 mm2 is a judged range for 18 to 24 mm
    /// hardware (see <see cref="FrictionJoint.LeakArea"/>).
    /// </summary>
    /// <param name="spread">How it scatters [mm2].</param>
    /// <returns>The input <c>joint.leak</c>.</returns>
    public static StudyInput<GapProblem> Leak(Distribution spread) => new StudyInput<GapProblem>("joint.leak", "mm2", spread,
        (p, v) => Design(p, d => d with
        {
            Joint = d.Joint with { Coupler = d.Joint.Coupler with { LeakArea = Area.FromSquareMillimeters(v) } },
        }));

    /// <summary>Ignition temperature of the grain.</summary>
    /// <param name="spread">How it scatters [K].</param>
    /// <returns>The input <c>grain.ignition</c>.</returns>
    public static StudyInput<GapProblem> IgnitionTemperature(Distribution spread) =>
        Grain("grain.ignition", "K", spread, (g, v) => g with { IgnitionTemperature = Temperature.FromKelvins(v) });

    /// <summary>Thermal conductivity of the grain.</summary>
    /// <param name="spread">How it scatters [W/(m K)].</param>
    /// <returns>The input <c>grain.conductivity</c>.</returns>
    public static StudyInput<GapProblem> Conductivity(Distribution spread) =>
        Grain("grain.conductivity", "W/(m K)", spread, (g, v) => g with { Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(v) });

    /// <summary>How much heat the particles bring to the grain.</summary>
    /// <param name="spread">How it scatters [-].</param>
    /// <returns>The input <c>closures.particle-efficiency</c>.</returns>
    public static StudyInput<GapProblem> ParticleEfficiency(Distribution spread) =>
        Closure("closures.particle-efficiency", "-", spread, (c, v) => c with { ParticleEfficiency = v });

    /// <summary>Heat transfer from the hot gas to the tube wall.</summary>
    /// <param name="spread">How it scatters [W/(m2 K)].</param>
    /// <returns>The input <c>closures.wall-heat</c>.</returns>
    public static StudyInput<GapProblem> WallHeatTransfer(Distribution spread) =>
        Closure("closures.wall-heat", "W/(m2 K)", spread,
            (c, v) => c with { WallHeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(v) });

    /// <summary>Emissivity of the products, towards grain and walls.</summary>
    /// <param name="spread">How it scatters [-].</param>
    /// <returns>The input <c>closures.emissivity</c>.</returns>
    public static StudyInput<GapProblem> Emissivity(Distribution spread) =>
        Closure("closures.emissivity", "-", spread, (c, v) => c with { Emissivity = v });

    /// <summary>Length over which a hole changes from drawing air to drawing products, in bores.</summary>
    /// <param name="spread">How it scatters [-].</param>
    /// <returns>The input <c>closures.front-thickness</c>.</returns>
    public static StudyInput<GapProblem> FrontThickness(Distribution spread) =>
        Closure("closures.front-thickness", "-", spread, (c, v) => c with { FrontThicknessInBores = v });

    /// <summary>Turbulent exchange with the dead end beyond the last vent.</summary>
    /// <param name="spread">How it scatters [-].</param>
    /// <returns>The input <c>closures.dead-end-exchange</c>.</returns>
    public static StudyInput<GapProblem> DeadEndExchange(Distribution spread) =>
        Closure("closures.dead-end-exchange", "-", spread, (c, v) => c with { DeadEndExchange = v });

    /// <summary>Depth over which the stirring of a dead end falls by e, in bores.</summary>
    /// <param name="spread">How it scatters [-].</param>
    /// <returns>The input <c>closures.stirring-reach</c>.</returns>
    public static StudyInput<GapProblem> StirringReach(Distribution spread) =>
        Closure("closures.stirring-reach", "-", spread, (c, v) => c with { StirringReachInBores = v });

    /// <summary>Core of the free jet across an opening, in bores.</summary>
    /// <param name="spread">How it scatters [-].</param>
    /// <returns>The input <c>closures.free-jet-core</c>.</returns>
    public static StudyInput<GapProblem> FreeJetCore(Distribution spread) =>
        Closure("closures.free-jet-core", "-", spread, (c, v) => c with { FreeJetCoreInBores = v });

    /// <summary>
    /// How the time to ignition answers to grain and closures: a study whose result is ln(time over nominal time) [-]
    /// and whose inputs are factors on the nominal values [-]. The slope of a bar of <see cref="Tornado"/> is then
    /// d ln(time)/d ln(input): 1 means that one per cent more takes one per cent longer.
    /// </summary>
    /// <remarks>
    /// Whole runs are compared, since exchange, front and wall change the flow as well. Left out are inputs that are
    /// zero, and those that leave their range or put the light out at an end. A tornado with tails of 0.4 takes its
    /// slopes at a tenth and at a twentieth of the width of the range. The cost is 27 gap runs here, 53 for the
    /// tornado.
    /// </remarks>
    /// <param name="problem">The gap; it must light.</param>
    /// <param name="share">Half the width of the range of each factor [-], 0.005 to 0.5; 0.1 is a good start, smaller
    /// ones meet the tolerance of the runs.</param>
    /// <param name="model">How the gas is modelled; null for the two-zone model.</param>
    /// <param name="options">How to integrate; null for the defaults.</param>
    /// <param name="cancellationToken">Stops the runs.</param>
    /// <returns>The study, with one input for each quantity that can be varied.</returns>
    /// <exception cref="InvalidModelException">The problem is in error, or the gap does not light
    /// (<c>SIZ005</c>).</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static SensitivityStudy<GapProblem> IgnitionTimeStudy(this GapProblem problem, double share = 0.1, GapModel? model = null,
        SolverOptions? options = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return IgnitionInputs.Study(problem, Guard.In(share, 0.005, 0.5, "-", nameof(share)), model, options, cancellationToken);
    }

    /// <summary>A gap with another breakaway force [N]; the sliding force keeps its ratio to it.</summary>
    internal static GapProblem WithBreakaway(GapProblem problem, double newtons) => problem.With(breakaway: Force.FromNewtons(newtons));

    private static GapProblem Design(GapProblem problem, Func<GapDesign, GapDesign> change) =>
        problem with { Design = change(problem.Design) };

    private static StudyInput<GapProblem> Closure(string path, string unit, Distribution spread,
        Func<MixingAndHeat, double, MixingAndHeat> with) =>
        new StudyInput<GapProblem>(path, unit, spread, (p, v) => Design(p, d => d with { MixingAndHeat = with(d.MixingAndHeat, v) }));

    /// <summary>An input of the grain.</summary>
    internal static StudyInput<GapProblem> Grain(string path, string unit, Distribution spread,
        Func<UpperGrain, double, UpperGrain> with) =>
        new StudyInput<GapProblem>(path, unit, spread, (p, v) => Design(p, d => d with { Grain = with(d.Grain, v) }));
}
