using Staging.Core.Gaps;
using Staging.Core.Sizing;
using static GapRows.DemoGap;

namespace GapRows;

/// <summary>
/// The gaps that common practice speaks of: under the stated pulse, from the grain, and over what is unknown.
/// </summary>
internal static class Rows
{
    private static readonly VentLayout Layout = new() { HoleCount = 2 };

    private static readonly (string Gap, string Vents, GapProblem Problem)[] All =
    [
        .. new double[] { 250, 460, 900 }.Select(length => ($"{length:F0} mm", "one 6 mm hole", OneHole(length, 6))),
        ("250 mm", "one 9 mm hole, 63 mm2", OneHole(250, 9)),
        ("250 mm", "closed", With(250, _ => [])),
        ("250 mm", "four 3 mm holes, as much as one of 6 mm", With(250, t => [Below(t, 3, 4)])),
        ("250 mm", "one window, 25 mm long, 454 mm2", With(250, Window)),
        ("250 mm", "open side, six rings of four 10 mm holes", With(250, OpenSide)),
        ("120 mm", "one 6 mm hole", OneHole(120, 6)),
        ("120 mm", "open side, three rings of four 10 mm holes", With(120, OpenSide)),
        ("120 mm", "two 5 mm holes: the demo as built", AsBuilt),
    ];

    public static IEnumerable<string> Table()
    {
        yield return "| gap | vents | stated pulse | from the grain | gas alone | corners lit | decides most |";
        yield return "|---|---|---|---|---|---|---|";
        foreach ((string gap, string vents, GapProblem problem) in All)
        {
            GapBracket bracket = problem.Bracket(Layout);
            int lit = bracket.Cases.Count(c => c.Outcome.IsLitBeforeParting);
            yield return $"| {gap} | {vents} | {Words.InShort(Stated(problem))} | {Words.InShort(problem)} | {Words.Of(bracket.GasAlone!)} | "
                + $"{lit} of {bracket.Cases.Length} | {bracket.Decides ?? "-"} |";
        }
    }

    public static GapProblem OneHole(double length_mm, double diameter_mm) => With(length_mm, t => [Below(t, diameter_mm, 1)]);

    /// <summary>The same gap with the gas of a stated pulse at the booster, as it was modelled before.</summary>
    private static GapProblem Stated(GapProblem problem) => problem.With(source: Samples.StatedPulse.Booster);
}
