using System.Collections.Immutable;
using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

public class SensitivityTests
{
    private static readonly StudyInput<ImmutableArray<double>>[] Three =
        [.. Enumerable.Range(0, 3).Select(d => new StudyInput<ImmutableArray<double>>($"x{d + 1}", "-", Distribution.Uniform(0, 1), (x, v) => x.SetItem(d, v)))];

    private static readonly InputSet<ImmutableArray<double>> Cube = new InputSet<ImmutableArray<double>>([0, 0, 0], [.. Three]);

    /// <summary>Linear but for a product: 3 x1 - 2 x2 + x2 x3.</summary>
    private static readonly SensitivityStudy<ImmutableArray<double>> Linear =
        new() { Inputs = Cube, Unit = "-", Model = (x, _) => 3 * x[0] - 2 * x[1] + x[1] * x[2] };

    [Fact]
    public void Elementary_effects_of_a_straight_input_are_its_slope_without_scatter()
    {
        ImmutableArray<MorrisEffect> effects = Linear.Screen(50);
        Assert.Equal(3, effects[0].Mean, 1e-10);
        Assert.Equal(0, effects[0].StandardDeviation, 1e-10);
        Assert.True(effects[1].Mean < 0 && effects[1].MeanAbsolute > 0);
        // The effect of x3 is x2 on the grid of eighths: mean 1/2, scatter sqrt(1/7^2 (64 - 1)/12) = 0.327.
        Assert.True(effects[2].MeanAbsoluteInterval.Holds(0.5));
        Assert.InRange(effects[2].StandardDeviation, 0.25, 0.41);
    }

    [Fact]
    public void Scatter_of_repetitions_is_over_their_number_less_one()
    {
        // Eight values about 5 whose squares sum to 32; t of 7 degrees of freedom at 95 % is 2.364624 (tables).
        (double mean, double scatter) = Replicates.MeanAndScatter([2, 4, 4, 4, 5, 5, 7, 9]);
        Assert.Equal((5, Math.Sqrt(32.0 / 7)), (mean, scatter));
        Interval interval = Replicates.Interval([2, 4, 4, 4, 5, 5, 7, 9], 0.95);
        Assert.Equal(2.364624 * scatter / Math.Sqrt(8), interval.HalfWidth, 1e-6);
        // Two paths about one slope differ by nothing; the scatter of the effects 1 and 3 is the root of 2.
        Assert.Equal(Math.Sqrt(2), new MorrisEffect(new ColumnName("x", "-"), [1, 3]).StandardDeviation, 1e-15);
    }

    [Fact]
    public void Every_level_of_the_grid_is_visited()
    {
        var seen = new System.Collections.Concurrent.ConcurrentBag<double>();
        var study = new SensitivityStudy<ImmutableArray<double>> { Inputs = Cube, Unit = "-", Model = (x, _) => { seen.Add(Math.Round(7 * x[0], 6)); return x[0]; } };
        study.Screen(200);
        Assert.Equal([0, 1, 2, 3, 4, 5, 6, 7], seen.Distinct().Order());
    }

    [Fact]
    public void Inputs_without_ends_are_screened_between_their_tails()
    {
        var study = new SensitivityStudy<ImmutableArray<double>>
        {
            Inputs = new([0, 0, 0], new StudyInput<ImmutableArray<double>>("z", "-", Distribution.Normal(0, 1), (x, v) => x.SetItem(0, v))),
            Unit = "-",
            Model = (x, _) => Math.Abs(x[0]) < 2.4 ? x[0] : throw new InvalidOperationException("far out"),
        };
        Assert.True(study.Screen(20)[0].Mean > 0);
    }

    [Fact]
    public void Shares_of_a_linear_model_are_those_of_its_variances()
    {
        // Var = 9/12 + Var(x2 (x3 - 2)); with E = 1/2, E2 = 1/3: first order of x2 (1.5)^2/12, of x3 (1/2)^2/12, together (1/12)^2.
        double both = 1 / 144.0, x2 = 2.25 / 12, x3 = 0.25 / 12, total = 0.75 + x2 + x3 + both;
        ImmutableArray<SobolIndex> shares = Linear.VarianceShares(256, confidence: 0.999, seed: 2);
        Assert.True(shares[0].FirstInterval.Holds(0.75 / total) && shares[0].TotalInterval.Holds(0.75 / total));
        Assert.True(shares[1].FirstInterval.Holds(x2 / total) && shares[1].TotalInterval.Holds((x2 + both) / total));
        Assert.True(shares[2].FirstInterval.Holds(x3 / total) && shares[2].TotalInterval.Holds((x3 + both) / total));
        Assert.All(shares, s => Assert.InRange(s.TotalInterval.HalfWidth, 0, 0.01));
    }

    [Fact]
    public void Threads_change_no_share_and_no_effect()
    {
        (double, double, double, double)[] Shares(int threads) => [.. Linear.VarianceShares(32, options: new StudyOptions { Threads = threads })
            .Select(s => (s.First, s.FirstInterval.Low, s.Total, s.TotalInterval.High))];
        (double, double, double, double)[] Effects(int threads) => [.. Linear.Screen(10, options: new StudyOptions { Threads = threads })
            .Select(e => (e.Mean, e.MeanAbsolute, e.StandardDeviation, e.MeanAbsoluteInterval.High))];
        foreach (int threads in new[] { 2, 8 })
        {
            Assert.Equal(Shares(1), Shares(threads));
            Assert.Equal(Effects(1), Effects(threads));
        }
    }

    [Fact]
    public void A_result_that_never_varies_has_no_shares() =>
        Assert.Throws<InvalidOperationException>(() => (Linear with { Model = (_, _) => 1 }).VarianceShares(8));

    [Fact]
    public void A_tornado_has_the_slopes_at_the_centre_and_the_longest_bar_first()
    {
        ImmutableArray<TornadoBar> bars = Linear.Bars(0.1);
        Assert.Equal(["x1", "x2", "x3"], bars.Select(b => b.Input.Name));
        Assert.Equal([3, -1.5, 0.5], bars.Select(b => Math.Round(b.Slope!.Value, 9)));
        Assert.Equal((0.1, 0.9, 0.75), (bars[0].Low, bars[0].High, bars[0].AtCentre));
        Assert.Equal(2.4, bars[0].Length, 1e-12);
        Assert.Equal(bars[1].AtCentre - 1.5 * 0.4, bars[1].AtHigh, 1e-12);
    }

    [Fact]
    public void A_listed_input_may_have_no_slope()
    {
        var study = Linear with { Inputs = new([0, 0, 0], new StudyInput<ImmutableArray<double>>("n", "-", Distribution.Discrete((1, 1), (2, 1), (3, 1)), (x, v) => x.SetItem(0, v))) };
        Assert.Null(study.Bars()[0].Slope);
    }

    [Fact]
    public void Wrong_numbers_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Linear.Screen(10, levels: 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Linear.Screen(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Linear.VarianceShares(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Linear.Bars(0.5));
        Assert.Throws<ArithmeticException>(() => (Linear with { Model = (_, _) => double.NaN }).Bars());
    }
}
