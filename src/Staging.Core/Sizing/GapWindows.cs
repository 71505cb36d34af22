using Staging.Core.Gaps;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>Answers a <see cref="GapQuestion"/>, at its nominal numbers or at a probability asked for.</summary>
public static class GapWindows
{
    /// <summary>Ratio less 1 at which an edge of vent area counts as found [-]: finer than drills come.</summary>
    private const double AreaEdge = 0.02;

    /// <summary>Width at which an edge of gap length counts as found [mm]: what can be cut.</summary>
    private const double LengthEdge = 1;

    /// <summary>
    /// Width at which an edge of retention counts as found [N]: finer than a friction fit can be made.
    /// </summary>
    private const double ForceEdge = 0.5;

    /// <summary>The smallest and largest total vent area that lights a gap of given length.</summary>
    /// <param name="question">The question.</param>
    /// <param name="gap">Length of the gap [m], 1 mm to 5 m.</param>
    /// <param name="areas">Total vent areas to try, in mm2.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>The windows in mm2, or that no area of the axis lights.</returns>
    /// <exception cref="ArgumentException">The axis is not in that unit.</exception>
    /// <exception cref="InvalidModelException">The question cannot be answered, or a gap of the search cannot be built:
    /// see <see cref="GapQuestion"/>.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static WindowResult VentWindow(
        this GapQuestion question, Length gap, Axis areas, StudyOptions? options = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        Check(question);
        return WindowSearch.Find(In(areas, "mm2"), AreaEdge,
            (mm2, stop) => Lights(question, gap, Area.FromSquareMillimeters(mm2), null, stop), options, cancellationToken);
    }

    /// <summary>The vent windows over a range of gap lengths: the map a builder needs.</summary>
    /// <param name="question">The question.</param>
    /// <param name="gaps">Gap lengths, in mm.</param>
    /// <param name="areas">Total vent areas to try, in mm2.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Told how far it has come, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>One window result for each length.</returns>
    /// <exception cref="ArgumentException">The axis is not in that unit.</exception>
    /// <exception cref="InvalidModelException">The question cannot be answered, or a gap of the search cannot be built:
    /// see <see cref="GapQuestion"/>.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static SweepLine<WindowResult> VentWindows(
        this GapQuestion question, Axis gaps, Axis areas, StudyOptions? options = null, IProgress<StudyProgress>? progress = null,
        CancellationToken cancellationToken = default) =>
        question.VentWindowsInParts(gaps, areas).Whole(options, progress, cancellationToken);

    /// <summary>
    /// Prepares the vent windows over a range of gap lengths so that parts of the lengths run anywhere. See
    /// <see cref="VentWindows"/>.
    /// </summary>
    /// <param name="question">The question.</param>
    /// <param name="gaps">Gap lengths, in mm.</param>
    /// <param name="areas">Total vent areas to try, in mm2.</param>
    /// <returns>
    /// The study; its answer is one window result for each length. Parts are compared by axes, kind of model,
    /// probability asked and spreads; not by the gap, its layout and the solver.
    /// </returns>
    /// <exception cref="ArgumentException">The axis is not in that unit.</exception>
    /// <exception cref="InvalidModelException">The question cannot be answered: see
    /// <see cref="GapQuestion"/>.</exception>
    public static PartitionedStudy<SweepLine<WindowResult>> VentWindowsInParts(this GapQuestion question, Axis gaps, Axis areas)
    {
        ArgumentNullException.ThrowIfNull(question);
        Check(question);
        var alone = new StudyOptions { Threads = 1 };
        PartCodec<WindowResult> form = WindowSearch.Codec(In(areas, "mm2"));
        return Sweep.AlongInParts(
            In(gaps, "mm"),
            (mm, stop) => question.VentWindow(Length.FromMillimeters(mm), areas, alone, stop),
            form with { Remark = $"{form.Remark}, {ModelText(question.Model)}{AskedText(question)}" });
    }

    /// <summary>How long the gap may be with a given vent area: the upper edge of the windows.</summary>
    /// <param name="question">The question.</param>
    /// <param name="total">Total vent area.</param>
    /// <param name="gaps">Gap lengths to try, in mm.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>The windows in mm, or that no length of the axis lights.</returns>
    /// <exception cref="ArgumentException">The axis is not in that unit.</exception>
    /// <exception cref="InvalidModelException">The question cannot be answered, or a gap of the search cannot be built:
    /// see <see cref="GapQuestion"/>.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static WindowResult LongestGap(
        this GapQuestion question, Area total, Axis gaps, StudyOptions? options = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        Check(question);
        return WindowSearch.Find(In(gaps, "mm"), LengthEdge, (mm, stop) => Lights(question, Length.FromMillimeters(mm), total, null, stop),
            options, cancellationToken);
    }

    /// <summary>
    /// How hard the joint must hold: the lower edge of the windows. The sliding force keeps its ratio to the breakaway
    /// force.
    /// </summary>
    /// <param name="question">The question; an uncertain <c>joint.breakaway</c> is left out of it, since that is what
    /// is asked for.</param>
    /// <param name="gap">Length of the gap [m], 1 mm to 5 m.</param>
    /// <param name="total">Total vent area.</param>
    /// <param name="forces">Breakaway forces to try, in N.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>The windows in N, or that no force of the axis helps.</returns>
    /// <exception cref="ArgumentException">The axis is not in that unit.</exception>
    /// <exception cref="InvalidModelException">The question cannot be answered, or a gap of the search cannot be built:
    /// see <see cref="GapQuestion"/>.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static WindowResult MinRetention(
        this GapQuestion question, Length gap, Area total, Axis forces, StudyOptions? options = null,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        GapQuestion rest = question with { Uncertain = [.. question.Uncertain.Where(i => i.Path != GapInputs.BreakawayPath)] };
        Check(rest);
        return WindowSearch.Find(In(forces, "N"), ForceEdge, (newtons, stop) => Lights(rest, gap, total, newtons, stop), options,
            cancellationToken);
    }

    private static Axis In(Axis axis, string unit)
    {
        ArgumentNullException.ThrowIfNull(axis);
        return axis.Name.Unit == unit ? axis : throw new ArgumentException($"The axis {axis.Name} has to be in {unit}.", nameof(axis));
    }

    private static string ModelText(GapModel model) => model.Match(
        _ => nameof(GapModel.TwoZone),
        _ => nameof(GapModel.WellStirred),
        resolved => Invariant.Text(
            $"{nameof(GapModel.OneDimensional)} in {resolved.Cells} cells at a Courant number of {resolved.CourantNumber:R}"));

    private static string AskedText(GapQuestion question) =>
        question.Asked is { } asked ? $", {asked} over {string.Join("; ", question.Uncertain.Select(i => i.Scatter))}" : "";

    /// <summary>
    /// A probability is a statement about what is uncertain: with nothing of it every answer would be the nominal one
    /// under a better name.
    /// </summary>
    private static void Check(GapQuestion question)
    {
        if (question.Asked is not null && question.Uncertain.IsEmpty)
            throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "STU001", nameof(question.Uncertain),
                "A probability is asked for, and no input is left that is uncertain; give one or more, or ask for nominal answers.")]);
        question.Asked?.Check();
    }

    private static bool Lights(GapQuestion question, Length gap, Area total, double? breakaway_N, CancellationToken stop)
    {
        try
        {
            GapProblem problem = Built(question, gap, total, breakaway_N);
            bool IsLit(GapProblem p, CancellationToken cancel) =>
                p.Solve(question.Model, question.Solver, cancellationToken: cancel).Outcome.IsLitBeforeParting;
            InvalidModelException.ThrowOnError(problem.Check());
            return question.Asked is { } asked
                ? asked.Of(new InputSet<GapProblem>(problem, question.Uncertain), IsLit, stop)
                : IsLit(problem, stop);
        }
        catch (InvalidModelException refusal)
        {
            string at = Point(gap, total, breakaway_N);
            throw new InvalidModelException([.. refusal.Findings.Select(f => f with { Message = $"{at}: {f.Message}" })]);
        }
    }

    /// <summary>The gap at one point of a search.</summary>
    private static GapProblem Built(GapQuestion question, Length gap, Area total, double? breakaway_N)
    {
        try
        {
            GapDesign design = question.Problem.Design;
            GapProblem problem = (question.Problem with { Design = design with { Tube = design.Tube with { Length = gap } } })
                .WithVents(question.Layout, total);
            return breakaway_N is { } newtons ? GapInputs.WithBreakaway(problem, newtons) : problem;
        }
        catch (ArgumentException refusal)
        {
            throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "STU015", nameof(question.Layout),
                $"This cannot be built: {refusal.Message.ReplaceLineEndings(" ")} A narrower axis would fit.")]);
        }
    }

    private static string Point(Length gap, Area total, double? breakaway_N) =>
        Invariant.Text($"At a gap of {gap.Millimeters:G6} mm with {total.SquareMillimeters:G6} mm2 of vents")
        + (breakaway_N is { } newtons ? Invariant.Text($" and a joint of {newtons:G6} N") : "");
}
