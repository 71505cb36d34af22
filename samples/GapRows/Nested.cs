using Staging.Core.Gaps;
using Staging.Core.Sizing;
using UnitsNet;
using static GapRows.DemoGap;

namespace GapRows;

/// <summary>
/// Nested tubes with holes in one wall or both, and a side cut open with and without a tube across it: the demo gap of
/// 120 mm.
/// </summary>
internal static class Nested
{
    private const double Length_mm = 120;

    public static IEnumerable<string> Table()
    {
        yield return "| 120 mm | " + Words.Columns;
        yield return "|---|---|---|---|---|---|---|";
        yield return Row("one tube, four 6 mm holes", Tube(6));
        yield return Row("nested: four 6 mm holes in the inner tube, none in the outer", Inside(6));
        yield return Row("nested: four 6 mm holes in both", Inside(6, Side(6)));
        yield return Row("nested: four 7.1 mm holes in both, 1.4 times the area", Inside(7.1, Side(7.1)));
        yield return Row("nested: four 6 mm holes in the inner tube, two of 6 mm rearwards through a centring ring", Inside(6, Rear(6)));
        yield return Row("one tube, its side cut away over 100 mm", Open());
        yield return Row("the same side open, a guide tube across it with four 6 mm holes", Tube(6));
    }

    private static GapProblem Tube(double diameter_mm) => With(Length_mm, t => [Below(t, diameter_mm, 4)]);

    /// <summary>An outer tube of 24 mm bore round an inner one of 19 mm, closed by rings over 100 mm.</summary>
    private static GapProblem Inside(double diameter_mm, params ReadOnlySpan<JacketOpening> openings)
    {
        Jacket jacket = Jacket.Between("outer tube", Length.FromMillimeters(19), Length.FromMillimeters(24), Length.FromMillimeters(100),
            openings);
        GapProblem one = Tube(diameter_mm);
        return one with
        {
            Design = one.Design with
            {
                Vents = [one.Design.Vents[0] with { To = VentTarget.IntoJacket(jacket.Name) }],
                Jackets = [jacket]
            }
        };
    }

    private static JacketOpening Side(double diameter_mm) => new() { Holes = Holes(diameter_mm, 4), To = VentTarget.Air };

    private static JacketOpening Rear(double diameter_mm) => new() { Holes = Holes(diameter_mm, 2), To = VentTarget.Air };

    private static GapProblem Open()
    {
        GapProblem closed = With(Length_mm, _ => []);
        return closed.WithVents(new VentLayout { HoleCount = 4 }, Area.FromSquareMillimeters(0.8 * Math.PI * closed.Design.Tube.Bore.Millimeters * 100));
    }

    private static string Row(string gap, GapProblem problem) =>
        $"| {gap} | {Words.Columned(problem.Solve())}";
}
