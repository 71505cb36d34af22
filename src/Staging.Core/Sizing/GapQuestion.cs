using Staging.Core.Gaps;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>
/// What a builder asks of a gap before anything is glued: which vent areas light it, how long it may be, how hard the
/// joint must hold.
/// </summary>
/// <remarks>
/// Without <see cref="Asked"/> the answers are nominal: right for the numbers given, and silent about how far they are
/// off. A window says where the model lights; it permits nothing. Every search runs over the values of an axis: a
/// window narrower than a step may be missed. Every value has to give a gap that can be built and solved: one that
/// cannot ends the search, with an error that names its length, its vent area and its joint (<c>STU015</c>,
/// <c>SIZ004</c>); it does not count as unlit. A probability of nothing uncertain is refused, and one that the cases
/// could not bear. Vent areas are put into every wall on the way out, as by <see cref="VentSizing.WithVents"/>.
/// </remarks>
public sealed record GapQuestion
{
    /// <summary>The gap; its vents are replaced by holes in the layout.</summary>
    public required GapProblem Problem { get; init => field = Guard.NotNull(value); }

    /// <summary>How vent area is drilled.</summary>
    public required VentLayout Layout { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// What is uncertain; used with <see cref="Asked"/> alone. <see cref="GapInputs.Judged"/> is a start.
    /// </summary>
    public EquatableArray<StudyInput<GapProblem>> Uncertain { get; init; } = [];

    /// <summary>
    /// The probability asked for; null for nominal answers. It needs something <see cref="Uncertain"/>.
    /// </summary>
    public Assurance? Asked { get; init; }

    /// <summary>
    /// How the gas in the gap is modelled; <see cref="GapModel.TwoZone"/>, where nothing else is said.
    /// </summary>
    public GapModel Model { get; init => field = Guard.NotNull(value); } = new GapModel.TwoZone();

    /// <summary>
    /// How the gaps of a search are integrated; <see cref="SolverOptions.ForStudies"/> where it is <see
    /// cref="SolverOptions.ForGaps"/>, as nothing else is said.
    /// </summary>
    public SolverOptions Solver { get; init => field = Guard.NotNull(value); } = SolverOptions.ForGaps;

    /// <summary>
    /// The smallest and largest total vent area that lights a gap of given length; edges are found within 2 %.
    /// </summary>
    /// <param name="gap">Length of the gap [m], 1 mm to 5 m.</param>
    /// <param name="areas">Total vent areas to try, in mm2.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>The windows in mm2, or that no area of the axis lights.</returns>
    /// <exception cref="ArgumentException">The axis is not in that unit.</exception>
    /// <exception cref="InvalidModelException">The question cannot be answered, or a gap of the search cannot be built
    /// or solved.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public WindowResult VentWindow(Length gap, Axis areas, StudyOptions? options = null, CancellationToken cancellationToken = default) =>
        GapWindows.OfVents(this, gap, areas, options, cancellationToken);

    /// <summary>The vent windows over a range of gap lengths: the map a builder needs.</summary>
    /// <param name="gaps">Gap lengths, in mm.</param>
    /// <param name="areas">Total vent areas to try, in mm2.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Told how far it has come, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>One window result for each length.</returns>
    /// <exception cref="ArgumentException">The axis is not in that unit.</exception>
    /// <exception cref="InvalidModelException">The question cannot be answered, or a gap of the search cannot be built
    /// or solved.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public SweepLine<WindowResult> VentWindows(
        Axis gaps, Axis areas, StudyOptions? options = null, IProgress<StudyProgress>? progress = null,
        CancellationToken cancellationToken = default) =>
        VentWindowsInParts(gaps, areas).Whole(options, progress, cancellationToken);

    /// <summary>
    /// Prepares the vent windows over a range of gap lengths so that parts of the lengths run anywhere. See
    /// <see cref="VentWindows"/>.
    /// </summary>
    /// <param name="gaps">Gap lengths, in mm.</param>
    /// <param name="areas">Total vent areas to try, in mm2.</param>
    /// <returns>
    /// The study; its answer is one window result for each length. Parts are compared by axes, kind of model,
    /// probability asked and spreads; not by the gap, its layout and the solver.
    /// </returns>
    /// <exception cref="ArgumentException">The axis is not in that unit.</exception>
    /// <exception cref="InvalidModelException">The question cannot be answered.</exception>
    public PartitionedStudy<SweepLine<WindowResult>> VentWindowsInParts(Axis gaps, Axis areas) => GapWindows.InParts(this, gaps, areas);

    /// <summary>
    /// How long the gap may be with a given vent area: the upper edge of the windows, found within 1 mm.
    /// </summary>
    /// <param name="total">Total vent area.</param>
    /// <param name="gaps">Gap lengths to try, in mm.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>The windows in mm, or that no length of the axis lights.</returns>
    /// <exception cref="ArgumentException">The axis is not in that unit.</exception>
    /// <exception cref="InvalidModelException">The question cannot be answered, or a gap of the search cannot be built
    /// or solved.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public WindowResult LongestGap(Area total, Axis gaps, StudyOptions? options = null, CancellationToken cancellationToken = default) =>
        GapWindows.OfLengths(this, total, gaps, options, cancellationToken);

    /// <summary>
    /// How hard the joint must hold: the lower edge of the windows, found within 0.5 N. The sliding force keeps its
    /// ratio to the breakaway force. An uncertain <c>joint.breakaway</c> is left out, since that is what is asked for.
    /// </summary>
    /// <param name="gap">Length of the gap [m], 1 mm to 5 m.</param>
    /// <param name="total">Total vent area.</param>
    /// <param name="forces">Breakaway forces to try, in N.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>The windows in N, or that no force of the axis helps.</returns>
    /// <exception cref="ArgumentException">The axis is not in that unit.</exception>
    /// <exception cref="InvalidModelException">The question cannot be answered, or a gap of the search cannot be built
    /// or solved.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public WindowResult MinRetention(
        Length gap, Area total, Axis forces, StudyOptions? options = null, CancellationToken cancellationToken = default) =>
        GapWindows.OfForces(this with { Uncertain = [.. Uncertain.Where(i => i.Path != GapInputs.BreakawayPath)] }, gap, total, forces,
            options, cancellationToken);

    /// <summary>
    /// How likely the gap lights, over gap length and vent area, by the same cases in every cell. It takes what is
    /// <see cref="Uncertain"/>, and no probability asked for.
    /// </summary>
    /// <param name="gaps">Gap lengths, in mm.</param>
    /// <param name="areas">Total vent areas, in mm2.</param>
    /// <param name="cases">Cases of each cell, 1 to 10 million.</param>
    /// <param name="seed">The seed; the same seed gives the same cases.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Told how far it has come, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the study.</param>
    /// <returns>The counts of every cell: the same for any number of threads.</returns>
    /// <remarks>
    /// A case is run on every eighth cell of each axis and along the lines on which what comes of it changes; cells
    /// that are surrounded by one answer have it too. A region of another answer that holds none of those cells is
    /// missed; that between parted stages and cold ones is found however thin it is.
    /// </remarks>
    /// <exception cref="ArgumentException">An axis is not in that unit.</exception>
    /// <exception cref="InvalidModelException">Nothing is uncertain, a gap of the map cannot be built, or the map is
    /// too large to be kept.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public OddsMap OddsOver(Axis gaps, Axis areas, int cases = 400, ulong seed = 0, StudyOptions? options = null,
        IProgress<StudyProgress>? progress = null, CancellationToken cancellationToken = default) =>
        OddsOverInParts(gaps, areas, cases, seed).Whole(options, progress, cancellationToken);

    /// <summary>Prepares such a map so that parts of the cases run anywhere. See <see cref="OddsOver"/>.</summary>
    /// <param name="gaps">Gap lengths, in mm.</param>
    /// <param name="areas">Total vent areas, in mm2.</param>
    /// <param name="cases">Cases of each cell, 1 to 10 million.</param>
    /// <param name="seed">The seed; the same seed gives the same cases.</param>
    /// <returns>The study. Parts are compared by axes, kind of model, cases and spreads; not by the gap, its layout and
    /// the solver.</returns>
    /// <exception cref="ArgumentException">An axis is not in that unit.</exception>
    /// <exception cref="InvalidModelException">Nothing is uncertain, a gap of the map cannot be built, or the map is
    /// too large to be kept.</exception>
    public PartitionedStudy<OddsMap> OddsOverInParts(Axis gaps, Axis areas, int cases = 400, ulong seed = 0) =>
        OddsMapStudy.InParts(this, gaps, areas, cases, seed);
}
