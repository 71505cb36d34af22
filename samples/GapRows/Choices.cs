using Staging.Core.Gaps;
using static GapRows.DemoGap;

namespace GapRows;

/// <summary>
/// What the builder is free to choose, source data untouched: joint, vents, length; and the one input on which most
/// hangs.
/// </summary>
internal static class Choices
{
    private const double MaxParticles = 0.6;

    public static IEnumerable<string> Table()
    {
        double[] joints = [20, 40, 60, 500];
        yield return $"| gap and vents | "
            + $"{string.Join(" | ", joints.Select(n => n < 500 ? $"joint {n:F0} N" : "joint that cannot open"))} |";
        yield return $"|---|{string.Concat(joints.Select(_ => "---|"))}";
        foreach (double length in new double[] { 60, 120, 250 })
        {
            foreach (int holes in new[] { 1, 2, 4, 8 })
                yield return Row($"{length:F0} mm, {holes} x 6 mm", With(length, t => [Below(t, 6, holes)]), joints);
        }

        GapProblem hot = Rows.OneHole(250, 6)
            .With(d => d with { MixingAndHeat = d.MixingAndHeat with { ParticleEfficiency = MaxParticles } });
        yield return Row($"250 mm, 1 x 6 mm, particle efficiency {MaxParticles:F1}", hot, joints);
    }

    private static string Row(string name, GapProblem problem, double[] joints) =>
        $"| {name} | {string.Join(" | ", joints.Select(n => Words.InShort(problem.WithJoint(n))))} |";
}
