using Staging.Core.Gaps;
using Staging.Core.Solving;

namespace Staging.Core.GroundTests;

/// <summary>What the model says of one gap, as far as a test can be compared with it; times in seconds.</summary>
/// <param name="Ending">How it ends; null where the run was not solved: such a case has no weight.</param>
/// <param name="FirstFlame">When the front is at the uppermost vent, or burning pieces come to the nozzle just above it
/// [s]; null where neither ever is.</param>
/// <param name="JointMoves">When the joint first moves [s]; null where it never does.</param>
/// <param name="Parted">When the joint has opened [s]; null where it never has.</param>
/// <param name="Lit">When the grain is lit [s]; null where it never is.</param>
/// <param name="Gauge">Gap pressure above the outside [Pa] against time [s].</param>
internal sealed record GapAnswer(
    Ending? Ending, double? FirstFlame, double? JointMoves, double? Parted, double? Lit, Func<double, double> Gauge)
{
    /// <summary>Runs a gap.</summary>
    public static GapAnswer Of(GapProblem problem, GapModel model, SolverOptions solver, CancellationToken cancel)
    {
        GapRun run = problem.Solve(model, solver.OfCases, cancellationToken: cancel);
        double end = run.End.Seconds, outside = problem.Surroundings.Pressure.Pascals;
        double? At(GapEventKind kind) => run.TimeOf(kind)?.Seconds;
        return new GapAnswer(
            EndingOf(run),
            At(GapEventKind.FrontAtLastVent) is { } front && !(At(GapEventKind.PiecesAtNozzle) < front)
                ? front
                : At(GapEventKind.PiecesAtNozzle),
            At(GapEventKind.JointMoves),
            At(GapEventKind.JointOpens),
            At(GapEventKind.Lit),
            time => time <= end ? run.Course.At(time)[GapChannel.GapPressure] - outside : 0);
    }

    private static Ending? EndingOf(GapRun run) => run.Outcome.Match<Ending?>(
        _ => GroundTests.Ending.Lit,
        _ => GroundTests.Ending.Parted,
        _ => Dark(run),
        _ => Dark(run),
        _ => Dark(run),
        _ => null);

    /// <summary>A grain that stayed dark for another reason may all the same have parted later.</summary>
    private static Ending Dark(GapRun run) =>
        run.TimeOf(GapEventKind.JointOpens) is null ? GroundTests.Ending.Together : GroundTests.Ending.Parted;
}
