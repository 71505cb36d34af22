using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace TheoryFigures;

/// <summary>What the tolerance of a study costs and saves: the same cases of judged inputs at each of some tolerances.</summary>
internal static class Tolerances
{
    private const int Cases = 60;

    private static readonly SolverOptions Reference = SolverOptions.Default;

    private static readonly (string Name, SolverOptions Options)[] Tried =
    [
        ("1e-6 and 1e-8, single runs", SolverOptions.ForGaps),
        ("1e-4 and 1e-7", new() { RelativeTolerance = 1e-4, ScaledAbsoluteTolerance = 1e-7 }),
        ("1e-3 and 1e-7, cases of studies", SolverOptions.ForStudies),
        ("1e-2 and 1e-7", new() { RelativeTolerance = 1e-2, ScaledAbsoluteTolerance = 1e-7 }),
    ];

    private static readonly (string Name, GapProblem Problem)[] Gaps =
    [
        ("40 mm2 of vents", Vented(40)),
        ("closed", StartingGaps.Bore18mm),
        ("113 mm2 of vents", Vented(113)),
    ];

    public static IEnumerable<string> Table()
    {
        yield return "| gap | tolerances | lit | not solved | answers that differ | grain surface differs by: mean [K] | most [K] | "
            + "evaluations for 100 at 1e-6 |";
        yield return "|---|---|---|---|---|---|---|---|";
        foreach ((string name, GapProblem problem) in Gaps)
        {
            Case[] fine = Run(problem, Reference);
            double usual = 0;
            foreach ((string tolerances, SolverOptions options) in Tried)
            {
                Case[] cases = Run(problem, options);
                double calls = cases.Sum(c => c.Calls);
                usual = options == SolverOptions.ForGaps ? calls : usual;
                double[] apart = [.. cases.Zip(fine, (c, f) => Math.Abs(c.Surface_K - f.Surface_K))];
                int failed = cases.Count(c => !c.Solved), other = cases.Zip(fine).Count(pair => pair.First.Lit != pair.Second.Lit);
                double work = 100 * calls / usual;
                yield return FormattableString.Invariant(
                    $"| {name} | {tolerances} | {cases.Count(c => c.Lit)} of {Cases} | {failed} | {other} | {apart.Average():F2} | {apart.Max():F1} | {work:F0} |");
            }
        }
    }

    private static Case[] Run(GapProblem problem, SolverOptions options)
    {
        CaseColumns columns = new ReliabilityStudy<GapProblem, GapRun>
        {
            Inputs = new InputSet<GapProblem>(problem, GapInputs.JudgedFor(problem.Design)),
            Model = (p, stop) => p.Solve(options: options, cancellationToken: stop),
            Outcome = run => run.Outcome.IsLit ? "lit" : run.Failure is null ? "unlit" : "not solved",
            Measures =
            [
                new("lit", "-", run => run.Outcome.IsLit ? 1 : 0),
                new("solved", "-", run => run.Failure is null ? 1 : 0),
                new("surface", "K", run => run.PeakGrainSurface.Kelvins),
                new("calls", "-", run => run.Statistics.DerivativeCalls),
            ],
            Cases = Cases,
            Design = DesignKind.LowDiscrepancy,
            KeepCases = true,
        }.Run().Columns();
        double[][] measures = [.. columns.Measures.Select(m => m.Values.ToArray())];
        return [.. Enumerable.Range(0, Cases).Select(i => new Case(measures[0][i] == 1, measures[1][i] == 1, measures[2][i], measures[3][i]))];
    }

    private static GapProblem Vented(double area) =>
        StartingGaps.Bore18mm.WithVents(new VentLayout { HoleCount = 4 }, Area.FromSquareMillimeters(area));

    private sealed record Case(bool Lit, bool Solved, double Surface_K, double Calls);
}
