using Staging.Core.Gaps;
using Staging.Core.Solving;

namespace Staging.Core.Tests.Solving;

/// <summary>What a step may be wrong by.</summary>
public class ErrorScaleTests
{
    private static readonly SolverOptions Options = new() { RelativeTolerance = 1e-3, ScaledAbsoluteTolerance = 1e-7 };

    [Fact]
    public void A_trace_is_measured_by_the_whole_that_it_is_a_part_of()
    {
        double[] y = [4.0, 1e-6], error = [0, 1e-3];
        var alone = new ErrorScale(Options, [1, 1]);
        var mated = new ErrorScale(Options, [1, 1], [1, 0]);
        Assert.Equal(0.5 * Square(1e-3 / (1e-7 + 1e-9)), alone.ErrorSquare(error, y, y), 1.0);
        Assert.Equal(0.5 * Square(1e-3 / (1e-7 + 4e-3)), mated.ErrorSquare(error, y, y), 1e-12);
        Assert.Equal(Math.Sqrt(mated.ErrorSquare(error, y, y)), mated.Norm(error, y), 1e-12);
        Assert.Equal(mated.Norm(error, y), mated.Distance(error, [0, 0], y), 1e-12);
    }

    [Fact]
    public void The_larger_end_of_the_step_counts()
    {
        var scale = new ErrorScale(Options, [1]);
        Assert.Equal(scale.ErrorSquare([1e-3], [2], [2]), scale.ErrorSquare([1e-3], [1], [2]));
        Assert.Equal(scale.ErrorSquare([1e-3], [2], [2]), scale.ErrorSquare([1e-3], [-2], [1]));
    }

    [Fact]
    public void Mates_are_as_many_as_states() =>
        Assert.Contains("2 states and 1 mates", Assert.Throws<ArgumentException>(() => new ErrorScale(Options, [1, 1], [0])).Message);

    [Fact]
    public void The_gases_of_each_parcel_but_that_behind_the_front_are_mates_and_nothing_else_is()
    {
        GapParameters p = GapToSi.ToSi(StartingGaps.Bore18mm, false);
        int[] mates = StateLayout.Mates(p);
        for (int i = 0; i < mates.Length; i++)
            Assert.Equal(i, mates[mates[i]]);
        int parcels = (p.FirstShare - StateLayout.Cold) / StateLayout.Parcel;
        Assert.Equal(2 * parcels, mates.Where((mate, i) => mate != i).Count());
    }

    private static double Square(double x) => x * x;
}
