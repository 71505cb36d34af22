using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.Joints;

/// <summary>Friction stops a joint and holds it there; it does not push it back.</summary>
public class RestingJointTests
{
    /// <summary>Heavy bodies on a long coupler, moved by two milliseconds of strong flow; what follows is too weak to keep them moving.</summary>
    private static readonly GapProblem Nudged = (Bench.Gap with
    {
        Bodies = Pressed(1000, 10),
        Horizon = Duration.FromMilliseconds(20),
    }).With(d => d with
    {
        Source = d.Fed([0, 0.002, 0.003, 0.05], [0.01, 0.01, 0.0005, 0.0005], [1900, 1900, 1900, 1900]),
        Joint = Bench.Joint(3, engagement: 18),
    });

    public static TheoryData<GapModel> Models() => [new GapModel.TwoZone(), new GapModel.OneDimensional { Cells = 20 }];

    [Theory]
    [MemberData(nameof(Models))]
    public void It_rests_where_it_stops(GapModel model)
    {
        GapRun run = Nudged.Solve(model);
        Assert.Equal([GapEventKind.JointMoves, GapEventKind.JointRests], run.Events.Select(e => e.Kind).Where(k => k is GapEventKind.JointMoves or GapEventKind.JointRests));
        Duration rest = run.TimeOf(GapEventKind.JointRests)!.Value;
        double[] travel = [.. run.Sample(run.End / 5000)[GapChannel.JointTravel].ToArray()];
        Assert.True(travel[^1] > 1e-6);
        Assert.InRange(travel.Max() - travel[^1], 0, 1e-9);
        Assert.Equal(run.At(rest).JointTravel.Meters, travel[^1], 1e-15);
    }

    /// <summary>The highest pressure just moves the joint: it stops at once, and is not pressed further in than it was.</summary>
    [Theory]
    [InlineData(1e-3, 1000, 10)]
    [InlineData(3e-4, 1000, 10)]
    [InlineData(3e-4, 2, 5000)]
    public void One_that_barely_starts_rests_where_it_was(double excess, double grams, double press)
    {
        GapProblem nudged = Nudged with { Bodies = Pressed(grams, press) };
        GapRun held = nudged.With(d => d with { Joint = Bench.Joint(2000) }).Solve();
        double force = held.PeakGaugePressure.Pascals * Math.PI / 4 * 0.018 * 0.018, closing = 0.5e-3 * grams * press;
        Force hold = Force.FromNewtons(force * (1 - excess) - closing);
        GapRun run = nudged.With(d => d with { Joint = Bench.Joint(3, engagement: 18) with { BreakawayForce = hold, SlidingForce = hold } }).Solve();
        Assert.Equal([GapEventKind.JointMoves, GapEventKind.JointRests], run.Events.Select(e => e.Kind).Where(k => k is GapEventKind.JointMoves or GapEventKind.JointRests));
        double[] travel = [.. run.Sample(run.End / 5000)[GapChannel.JointTravel].ToArray()];
        Assert.InRange(travel.Min(), -1e-12, 0);
        // No further than the excess of force alone would have moved it in all the time.
        Assert.InRange(travel.Max(), 0, 0.5 * force * excess / (0.5e-3 * grams) * 0.02 * 0.02);
    }

    private static SeparatingBodies Pressed(double grams, double acceleration) => new()
    {
        MassAhead = Mass.FromGrams(grams),
        MassBehind = Mass.FromGrams(grams),
        ClosingAcceleration = Acceleration.FromMetersPerSecondSquared(acceleration),
    };
}
