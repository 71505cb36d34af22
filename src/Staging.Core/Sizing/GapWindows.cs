using Staging.Core.Gaps;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>Answers a <see cref="GapQuestion"/>, at its nominal numbers or at a probability asked for.</summary>
internal static class GapWindows
{
    /// <summary>Ratio less 1 at which an edge of vent area counts as found [-]: finer than drills come.</summary>
    private const double AreaEdge = 0.02;

    /// <summary>Width at which an edge of gap length counts as found [mm]: what can be cut.</summary>
    private const double LengthEdge = 1;

    /// <summary>
    /// Width at which an edge of retention counts as found [N]: finer than a friction fit can be made.
    /// </summary>
    private const double ForceEdge = 0.5;

    public static WindowResult OfVents(GapQuestion question, Length gap, Axis areas, StudyOptions? options, CancellationToken stop) =>
        Find(question, In(areas, "mm2"), AreaEdge, mm2 => new GapPoint(gap.Millimeters, mm2), options, stop);

    public static WindowResult OfLengths(GapQuestion question, Area total, Axis gaps, StudyOptions? options, CancellationToken stop) =>
        Find(question, In(gaps, "mm"), LengthEdge, mm => new GapPoint(mm, total.SquareMillimeters), options, stop);

    public static WindowResult OfForces(GapQuestion question, Length gap, Area total, Axis forces, StudyOptions? options,
        CancellationToken stop) =>
        Find(question, In(forces, "N"), ForceEdge, newtons => new GapPoint(gap.Millimeters, total.SquareMillimeters, newtons), options,
            stop);

    public static PartitionedStudy<SweepLine<WindowResult>> InParts(GapQuestion question, Axis gaps, Axis areas)
    {
        Check(question);
        var alone = new StudyOptions { Threads = 1 };
        PartCodec<WindowResult> form = Sweep.WindowCodec(In(areas, "mm2"));
        return Sweep.AlongInParts(
            In(gaps, "mm"),
            (mm, stop) => OfVents(question, Length.FromMillimeters(mm), areas, alone, stop),
            form.With($", {ModelText(question.Model)}{AskedText(question)}"));
    }

    private static WindowResult Find(GapQuestion question, Axis axis, double edge, Func<double, GapPoint> at, StudyOptions? options,
        CancellationToken stop)
    {
        Check(question);
        return Sweep.Windows(axis, edge, (value, cancel) => Lights(question, at(value), cancel), options, stop);
    }

    /// <summary>An axis that has to be in a unit.</summary>
    internal static Axis In(Axis axis, string unit)
    {
        ArgumentNullException.ThrowIfNull(axis);
        return axis.Name.Unit == unit ? axis : throw new ArgumentException($"The axis {axis.Name} has to be in {unit}.", nameof(axis));
    }

    /// <summary>The model, for headings of studies.</summary>
    internal static string ModelText(GapModel model) => model.Match(
        _ => nameof(GapModel.TwoZone),
        _ => nameof(GapModel.WellStirred),
        resolved => Invariant.Text(
            $"{nameof(GapModel.OneDimensional)} in {resolved.Cells} cells, {resolved.CellsPerBore} to a bore at most, "
                + $"at a Courant number of {resolved.CourantNumber:R}"));

    private static string AskedText(GapQuestion question) =>
        question.Asked is { } asked ? $", {asked} over {string.Join("; ", question.Uncertain.Select(i => i.Scatter))}" : "";

    /// <summary>
    /// A probability is a statement about what is uncertain: with nothing of it every answer would be the nominal one
    /// under a better name.
    /// </summary>
    private static void Check(GapQuestion question)
    {
        if (question.Asked is not null && question.Uncertain.Length == 0)
            throw Refusal("STU001", nameof(question.Uncertain),
                "A probability is asked for, and no input is left that is uncertain; give one or more, or ask for nominal answers.");
        question.Asked?.Check();
    }

    private static bool Lights(GapQuestion question, GapPoint point, CancellationToken stop) => point.Told(at =>
    {
        GapProblem problem = At(question, at);
        return question.Asked is { } asked ? IsAssured(question, problem, asked, stop) : IsLit(question, problem, stop);
    });

    /// <summary>The gap of a question at one point of a search, checked.</summary>
    /// <exception cref="InvalidModelException">It cannot be built.</exception>
    internal static GapProblem At(GapQuestion question, GapPoint at)
    {
        GapProblem problem = Built(question, at);
        InvalidModelException.ThrowOnError(problem.Check());
        return problem;
    }

    private static bool IsLit(GapQuestion question, GapProblem problem, CancellationToken stop)
    {
        GapOutcome outcome = problem.SolveUntilLit(question.Model, question.Solver.OfCases, stop).Outcome;
        return outcome.Lights() ?? throw Refusal("SIZ004", nameof(question.Solver),
            $"The run was not solved, so it is neither lit nor unlit: {outcome.Cause} A narrower axis, or more steps, would fit.");
    }

    /// <summary>
    /// Whether enough cases light. Cases that were not solved are first taken as unlit; if they could turn the answer,
    /// there is none.
    /// </summary>
    private static bool IsAssured(GapQuestion question, GapProblem problem, Assurance asked, CancellationToken stop)
    {
        var inputs = new InputSet<GapProblem>(problem, question.Uncertain);
        int notSolved = 0;
        if (asked.Of(inputs, Counting(false), stop))
            return true;
        if (notSolved == 0 || !asked.Of(inputs, Counting(true), stop))
            return false;
        throw Refusal("SIZ004", nameof(question.Solver), "So many cases were not solved that they decide whether the probability is "
            + "reached; they are neither lit nor unlit. A narrower axis, or more steps, would fit.");

        Func<GapProblem, CancellationToken, bool> Counting(bool notSolvedAs) => (p, cancel) =>
        {
            bool? lights = p.SolveUntilLit(question.Model, question.Solver.OfCases, cancel).Outcome.Lights();
            if (lights is null)
                notSolved++;
            return lights ?? notSolvedAs;
        };
    }

    private static GapProblem Built(GapQuestion question, GapPoint at)
    {
        try
        {
            GapDesign design = question.Problem.Design;
            GuideTube tube = design.Tube with { Length = Length.FromMillimeters(at.Gap_mm) };
            GapProblem problem = (question.Problem with { Design = design with { Tube = tube } })
                .WithVents(question.Layout, Area.FromSquareMillimeters(at.Total_mm2));
            return at.Breakaway_N is { } newtons ? GapInputs.WithBreakaway(problem, newtons) : problem;
        }
        catch (ArgumentException refusal)
        {
            throw Refusal("STU015", nameof(question.Layout),
                $"This cannot be built: {refusal.Message.ReplaceLineEndings(" ")} A narrower axis would fit.");
        }
    }

    /// <summary>A refusal with one finding.</summary>
    internal static InvalidModelException Refusal(string code, string path, string message) =>
        new([new ModelFinding(FindingSeverity.Error, code, path, message)]);
}
