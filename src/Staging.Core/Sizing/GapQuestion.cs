using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using Staging.Core.Studies;

namespace Staging.Core.Sizing;

/// <summary>
/// What a builder asks of a gap before anything is glued: which vent areas light it, how long it may be, how hard the
/// joint must hold.
/// </summary>
/// <remarks>
/// Without <see cref="Asked"/> the answers are nominal: right for the numbers given, and silent about how far they are
/// off. A window says where the model lights; it permits nothing. Every search runs over the values of an axis: a
/// window narrower than a step may be missed. Every value has to give a gap that can be built: one that cannot ends the
/// search, with an error that names its length, its vent area and its joint; it does not count as unlit. A probability
/// of nothing uncertain is refused, and one that the cases could not bear.
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
    public ImmutableArray<StudyInput<GapProblem>> Uncertain { get; init => field = Guard.Set(value); } = [];

    /// <summary>
    /// The probability asked for; null for nominal answers. It needs something <see cref="Uncertain"/>.
    /// </summary>
    public Assurance? Asked { get; init; }

    /// <summary>
    /// How the gas in the gap is modelled; <see cref="GapModel.TwoZone"/>, where nothing else is said.
    /// </summary>
    public GapModel Model { get; init => field = Guard.NotNull(value); } = new GapModel.TwoZone();

    /// <summary>How the gap is integrated.</summary>
    public SolverOptions Solver { get; init => field = Guard.NotNull(value); } = SolverOptions.Default;
}
