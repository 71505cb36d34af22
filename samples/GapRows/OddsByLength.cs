using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;

namespace GapRows;

/// <summary>
/// How often one 6 mm hole lights the demo's upper motor, against the length of the gap, over all judged inputs.
/// </summary>
internal static class OddsByLength
{
    private const int Cases = 128;

    private static readonly double[] Lengths = [50, 120, 250, 460, 900];

    public static IEnumerable<string> Table()
    {
        yield return $"| gap | lit, of {Cases} | probability at 95 % | mostly why not |";
        yield return "|---|---|---|---|";
        foreach (double length in Lengths)
        {
            ReliabilityRun run = Of(length);
            Interval interval = run.Probability("lit").ClopperPearson(0.95);
            string why = run.Outcomes.Where(o => o.Key != "lit").OrderByDescending(o => o.Value).Select(o => $"{o.Key}, {o.Value}").FirstOrDefault() ?? "-";
            yield return FormattableString.Invariant(
                $"| {length:F0} mm | {run.Outcomes.GetValueOrDefault("lit")} | {interval.Low:F2} to {interval.High:F2} | {why} |");
        }
    }

    public static ReliabilityRun Of(double length)
    {
        GapProblem gap = Rows.OneHole(length, 6);
        return new ReliabilityStudy<GapProblem, GapRun>
        {
            Inputs = new(gap, [.. GapInputs.JudgedFor(gap.Design)]),
            Model = (p, stop) => p.Solve(options: SolverOptions.ForStudies, cancellationToken: stop),
            Outcome = r => r.Outcome.IsLitBeforeParting ? "lit" : Words.Of(r.Outcome),
            Cases = Cases,
        }.Run();
    }
}
