using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.Joints;

/// <summary>Bodies that are pressed together hard: the joint never closes further than it was, in any model.</summary>
public class PressedTogetherTests
{
    public static TheoryData<GapModel, double> Cases()
    {
        var cases = new TheoryData<GapModel, double>();
        foreach (GapModel model in (GapModel[])[new GapModel.TwoZone(), new GapModel.WellStirred(), new GapModel.OneDimensional { Cells = 20 }])
            foreach (double closing in (double[])[50, 1000, 9000, 100_000])
                cases.Add(model, closing);
        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Bodies_do_not_pass_through_each_other(GapModel model, double closing)
    {
        GapProblem pressed = (StartingGaps.Bore18mm with
        {
            Bodies = StartingGaps.Bore18mm.Bodies with { ClosingAcceleration = Acceleration.FromMetersPerSecondSquared(closing) },
            AfterOpening = Duration.FromMilliseconds(20),
        }).With(d => d with { Joint = Bench.Joint(0.01, engagement: 0.5) });
        GapRun run = pressed.Solve(model);
        Assert.Null(run.Failure);
        Assert.All(run.Sample(run.End / 400)[GapChannel.JointTravel].ToArray(), travel => Assert.InRange(travel, -1e-9, double.MaxValue));
        if (!run.Events.Any(e => e.Kind == GapEventKind.JointOpens))
            return;
        Assert.Equal(GapEventKind.JointOpens, run.Events.Last(e => e.Kind is GapEventKind.JointMoves or GapEventKind.JointRests or GapEventKind.JointOpens).Kind);
        Assert.InRange(run.Sample(run.End / 400)[GapChannel.JointTravel].Span[^1], 0.9 * 0.5e-3, double.MaxValue);
    }
}
