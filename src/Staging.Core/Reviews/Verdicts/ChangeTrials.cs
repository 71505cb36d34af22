using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Sizing;
using UnitsNet;

namespace Staging.Core.Reviews;

/// <summary>Changes that a builder could make to a gap that stays cold: each is run.</summary>
internal static class ChangeTrials
{
    /// <summary>Factor on the force of a joint that opens too early, and on the length of a gap [-].</summary>
    private const double Firmer = 2, Shorter = 0.5;

    public static IEnumerable<TriedChange> Of(GapRun run, GapIgnition gap, VentAdvice? advice, CancellationToken cancel)
    {
        if (run.Outcome.IsLitBeforeParting)
            yield break;
        GapProblem problem = run.Problem;
        if (OuterHoles(problem) is { } opened)
            yield return Try(opened.Change, opened.Problem);
        if (advice is { Run: { } drilled })
        {
            string walls = string.Join("; ", advice.Walls);
            yield return new TriedChange($"the vents asked for ({walls}; {Where(drilled.Problem.Design)})", drilled);
        }

        double force = problem.Design.Joint.Coupler.BreakawayForce.Newtons;
        bool opens = run.TimeOf(GapEventKind.JointOpens) is not null;
        if (opens && force is > 0 and <= FrictionJoint.MaxForce_N / Firmer)
            yield return Try(Invariant.Text($"a joint of {Firmer * force:G4} N instead of {force:G4} N"),
                problem.With(breakaway: Force.FromNewtons(Firmer * force)));
        if (opens && problem.Design.Joint.Tape is { Strength.Newtons: <= FrictionJoint.MaxForce_N / Firmer } tape)
            yield return Try(Invariant.Text($"tape of {Firmer * tape.Strength.Newtons:G4} N instead of {tape.Strength.Newtons:G4} N"),
                problem.With(joint: StageJoint.Taped(problem.Design.Joint.Coupler, tape with { Strength = Firmer * tape.Strength })));
        if (HalfAsLong(problem, gap, advice) is { } shorter)
            yield return Try(Invariant.Text($"a gap of {shorter.Design.Tube.Length.Millimeters:G4} mm instead of "
                + $"{problem.Design.Tube.Length.Millimeters:G4} mm, vents of {shorter.Design.TotalVentArea.SquareMillimeters:F1} mm2"),
                shorter);

        TriedChange Try(string change, GapProblem changed) => new(change, changed.Solve(gap.Model, gap.Solver, cancellationToken: cancel));
    }

    /// <summary>
    /// Where the uppermost holes of the guide tube are: those asked for may be those drawn, elsewhere.
    /// </summary>
    private static string Where(GapDesign design)
    {
        Vent upper = design.Vents.MaxBy(v => v.Station)!;
        string below = Invariant.Text($"{(design.Tube.Length - upper.Station).Millimeters:F1} mm below the nozzle plane");
        return upper.Spread > 0 ? Invariant.Text($"rings over {1e3 * upper.Spread:F1} mm, their middle {below}") : $"centres {below}";
    }

    /// <summary>
    /// The gap with the holes of its tube repeated in the outer wall of every pocket that they lead into.
    /// </summary>
    private static (string Change, GapProblem Problem)? OuterHoles(GapProblem problem)
    {
        GapDesign design = problem.Design;
        Jacket[] pockets =
            [.. design.Jackets.Where(j => j.Openings.IsEmpty && design.Vents.Any(v => v.To.Jacket == j.Name))];
        if (pockets.Length == 0)
            return null;
        GapDesign opened = design with
        {
            Jackets = [.. design.Jackets.Select(j => pockets.Contains(j) ? j with { Openings = Into(j) } : j)],
        };
        string walls = string.Join(", ", pockets.Select(j => j.Name));
        return ($"the same holes in the outer wall ({walls})", problem with { Design = opened });

        EquatableArray<JacketOpening> Into(Jacket jacket) =>
        [
            .. design.Vents.Where(v => v.To.Jacket == jacket.Name)
                .Select(v => new JacketOpening { Holes = v.Holes, To = VentTarget.Air }),
        ];
    }

    /// <summary>
    /// Half the gap, its vents below the nozzle with the area asked for, or else the area it has; null where it has no
    /// layout, or that area cannot be drilled there.
    /// </summary>
    private static GapProblem? HalfAsLong(GapProblem problem, GapIgnition gap, VentAdvice? advice)
    {
        GapDesign design = problem.Design;
        Area area = advice?.Recommended ?? design.TotalVentArea;
        Length half = Shorter * design.Tube.Length;
        if (gap.Layout is not { } layout || area.SquareMeters <= 0 || half.Meters < MinLength || !design.Tube.Steps.IsEmpty)
            return null;
        EquatableArray<Vent> nearer = [.. design.Vents.Select(v => v with { Station = Shorter * v.Station })];
        GapProblem shorter = problem.With(length: half, vents: nearer);
        return layout.Check(shorter.Design).IsEmpty && VentRange.Of(layout, shorter.Design).Holds(area.SquareMeters)
            ? shorter.WithVents(layout, area)
            : null;
    }

    /// <summary>Shortest gap that is worth halving to [m]: below, motors are as good as in contact.</summary>
    private const double MinLength = 5e-3;
}
