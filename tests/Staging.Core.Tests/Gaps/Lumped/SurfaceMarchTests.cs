using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.Lumped;

/// <summary>Between looks the heat transfer is taken linearly: the surface comes out as if each mark had been looked at.</summary>
public class SurfaceMarchTests
{
    [Theory]
    [InlineData(10, 1e-3, 0)]
    [InlineData(30, 1e-3, 0)]
    [InlineData(100, 1e-3, 0)]
    [InlineData(400, 1e-3, 0)]
    [InlineData(30, 1e-2, 0)]
    [InlineData(30, 1e-6, 0)]
    [InlineData(10, 1e-3, 20)]
    public void The_surface_is_that_of_every_mark_within_the_tolerance_of_the_run(double area, double tolerance, double afterOpening)
    {
        GapProblem gap = StartingGaps.Bore18mm.WithVents(new VentLayout { HoleCount = 4 }, Area.FromSquareMillimeters(area)) with
        {
            AfterOpening = Duration.FromMilliseconds(afterOpening),
        };
        GapRun run = gap.Solve(options: SolverOptions.ForStudies with { RelativeTolerance = tolerance });
        var course = (LumpedHistory)run.Course;
        IgnitionTracker each = AtEachMark(course, run.End.Seconds);

        double initial = course.Parameters.Grain.Initial, most = 0, rise = 0;
        for (int mark = 1; mark < each.NextMark; mark++)
        {
            double time = IgnitionTracker.TimeOf(mark), surface = each.SurfaceAt(time);
            most = Math.Max(most, Math.Abs(course.At(time)[GapChannel.GrainSurface] - surface));
            rise = Math.Max(rise, surface - initial);
        }

        Assert.True(each.NextMark > 300 && rise > 50, $"{each.NextMark} marks, {rise} K");
        Assert.InRange(most / rise, 0, tolerance);
        Assert.Equal(each.IsLit, run.Outcome.IsLit);
        if (each.IsLit)
            Assert.Equal(each.LitTime, run.TimeOf(GapEventKind.Lit)!.Value.Seconds, 2 * tolerance * each.LitTime);
    }

    /// <summary>A run that ends when it is lit marches no further than that.</summary>
    [Fact]
    public void Nothing_is_marched_once_the_answer_is_there()
    {
        GapProblem gap = StartingGaps.Bore18mm.WithVents(new VentLayout { HoleCount = 4 }, Area.FromSquareMillimeters(100));
        GapRun whole = gap.Solve(options: SolverOptions.ForStudies), part = gap.SolveUntilLit(null, SolverOptions.ForStudies, CancellationToken.None);
        double lit = whole.TimeOf(GapEventKind.Lit)!.Value.Seconds;
        Assert.Equal(lit, part.TimeOf(GapEventKind.Lit)!.Value.Seconds);
        Assert.InRange(part.PeakGrainSurface.Kelvins, gap.Design.Grain.IgnitionTemperature.Kelvins, gap.Design.Grain.IgnitionTemperature.Kelvins + 2);
        Assert.True(whole.PeakGrainSurface.Kelvins > part.PeakGrainSurface.Kelvins + 2);
    }

    private static IgnitionTracker AtEachMark(LumpedHistory course, double end)
    {
        GapParameters p = course.Parameters;
        var tracker = new IgnitionTracker(p);
        double[] y = new double[p.StateCount];
        course.Track.At(0, y);
        tracker.Start(new LumpedView(p, y).HeatingAt(0));
        while (tracker.Next <= end)
        {
            course.Track.At(tracker.Next, y);
            tracker.Mark(new LumpedView(p, y));
        }

        return tracker;
    }
}
