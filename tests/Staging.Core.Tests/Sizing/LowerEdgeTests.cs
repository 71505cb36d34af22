using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Reviews;
using UnitsNet;

namespace Staging.Core.Tests.Sizing;

/// <summary>The search of the least vent area: gaps that light from a given area on, whatever else they hold.</summary>
public class LowerEdgeTests
{
    private static readonly GapProblem Gap = Bench.Gap.With(d => TestPlans.Lighting);
    private static readonly GapRun Lit = Gap.Solve(), Dark = Gap.With(vents: []).Solve(), Unsolved = Gap.Solve(options: new() { MaxSteps = 1 });
    private static readonly VentRange Range = VentRange.Of(TestPlans.Layout, Gap.Design);

    [Fact]
    public void The_runs_are_what_they_are_called()
    {
        Assert.True(Lit.Outcome.IsLitBeforeParting);
        Assert.False(Dark.Outcome.IsLitBeforeParting);
        Assert.IsType<GapOutcome.NotSolved>(Unsolved.Outcome);
    }

    /// <summary>One stride from there leaves the range; the largest area that can be drilled is tried all the same.</summary>
    [Fact]
    public void The_largest_area_is_tried()
    {
        double largest = Range.Largest.Area;
        double found = Search(largest / 1.2, area => area > 0.99 * largest ? Lit : Dark)!.Value.SquareMeters;
        Assert.InRange(found, 0.99 * largest, largest);
        Assert.Null(Search(largest / 1.2, _ => Dark));
    }

    [Fact]
    public void The_smallest_area_is_tried() =>
        Assert.Equal(Range.Smallest.Area, Search(1.2 * Range.Smallest.Area, _ => Lit)!.Value.SquareMeters);

    [Theory]
    [InlineData(8e-6)]
    [InlineData(20e-6)]
    [InlineData(70e-6)]
    public void The_edge_is_found_to_5_per_cent_from_either_side(double guess)
    {
        const double edge = 30e-6;
        double found = Search(guess, area => area >= edge ? Lit : Dark)!.Value.SquareMeters;
        Assert.InRange(found, edge, 1.052 * edge);
    }

    /// <summary>What was not solved was not seen to light: it may bound what does, and alone it gives no area.</summary>
    [Fact]
    public void A_run_that_was_not_solved_is_none_that_lights()
    {
        Assert.InRange(Search(60e-6, area => area >= 30e-6 ? Lit : Unsolved)!.Value.SquareMeters, 30e-6, 1.052 * 30e-6);
        Assert.Null(Search(60e-6, _ => Unsolved));
    }

    private static Area? Search(double guess, Func<double, GapRun> run) => LowerEdge.Of(
        Gap, TestPlans.Layout, Area.FromSquareMeters(guess), p => run(p.Design.TotalVentArea.SquareMeters));
}
