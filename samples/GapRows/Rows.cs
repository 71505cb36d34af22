using Staging.Core.Gaps;
using static GapRows.DemoGap;

namespace GapRows;

/// <summary>The gaps that common practice speaks of.</summary>
internal static class Rows
{
    public static IEnumerable<string> Table()
    {
        yield return "| gap | vents | " + Words.Columns;
        yield return "|---|---|---|---|---|---|---|---|";
        foreach (double length in new double[] { 250, 460, 900 })
            yield return Row($"{length:F0} mm", "one 6 mm hole", OneHole(length, 6));
        yield return Row("250 mm", "closed", With(250, _ => []));
        yield return Row("250 mm", "one window, 25 mm", OneHole(250, 25));
        yield return Row("250 mm", "open side, six rings of four 10 mm holes", With(250, OpenSide));
        yield return Row("120 mm", "one window, 25 mm", OneHole(120, 25));
        yield return Row("120 mm", "open side, three rings of four 10 mm holes", With(120, OpenSide));
        yield return Row("120 mm", "two 5 mm holes: the demo as built", AsBuilt);
    }

    public static GapProblem OneHole(double length_mm, double diameter_mm) => With(length_mm, t => [Below(t, diameter_mm, 1)]);

    private static string Row(string gap, string vents, GapProblem problem) =>
        $"| {gap} | {vents} | {Words.Columned(problem.Solve())}";
}
