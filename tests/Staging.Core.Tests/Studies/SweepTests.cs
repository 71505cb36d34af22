using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

public class SweepTests
{
    [Fact]
    public void The_widest_axes_still_have_finite_values_that_rise()
    {
        foreach (Axis axis in new[] { Axis.Even("x", "-", -1e300, 1e300, 9), Axis.Factors("x", "-", 1e-300, 1e300, 9) })
        {
            Assert.All(axis.Values, v => Assert.InRange(v, -1e300, 1e300));
            Assert.All(axis.Values.Zip(axis.Values.Skip(1)), pair => Assert.True(pair.First < pair.Second));
        }
    }

    [Fact]
    public void A_line_holds_its_values_and_results_in_order()
    {
        SweepLine<double> line = Sweep.Along(Axis.Even("x", "m", -1, 1, 5), (x, _) => x * x, new StudyOptions { Threads = 4 });
        Assert.Equal([-1, -0.5, 0, 0.5, 1], line.Axis.Values);
        Assert.Equal([1, 0.25, 0, 0.25, 1], line.Results);
    }

    /// <summary>On threads a function is handed a token of their own; what ends the sweep names the one that was cancelled.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_sweep_that_is_stopped_names_the_token_that_stopped_it(int threads)
    {
        using var mine = new CancellationTokenSource();
        OperationCanceledException stopped = Assert.ThrowsAny<OperationCanceledException>(() => Sweep.Along(
            Axis.Even("x", "-", 0, 1, 4), (x, stop) =>
            {
                mine.Cancel();
                stop.ThrowIfCancellationRequested();
                return x;
            }, new StudyOptions { Threads = threads }, cancellationToken: mine.Token));
        Assert.Equal(mine.Token, stopped.CancellationToken);
    }

    [Fact]
    public void A_part_of_a_sweep_is_refused()
    {
        var part = new StudyOptions { Part = new StudyPart(1, 2) };
        Axis axis = Axis.Even("x", "-", 0, 1, 4);
        foreach (Action refused in (Action[])
            [
                () => Sweep.Along(axis, (x, _) => x, part), () => Sweep.Over(axis, axis, (x, y, _) => x + y, part),
                () => Sweep.Windows(axis, 0.1, (_, _) => true, part),
            ])
            Assert.Equal("STU007", Assert.Single(Assert.Throws<InvalidModelException>(refused).Findings).Code);
    }

    [Fact]
    public void Factors_step_by_an_equal_ratio_and_keep_their_ends()
    {
        Axis axis = Axis.Factors("A", "mm2", 0.1, 1000, 5);
        Assert.Equal((0.1, 1000), (axis.Values[0], axis.Values[^1]));
        Assert.All(axis.Values.Zip(axis.Values.Skip(1)), p => Assert.Equal(10, p.Second / p.First, 1e-12));
    }

    [Fact]
    public void A_map_is_read_by_its_axes_and_written_with_units()
    {
        SweepMap<double> map = Sweep.Over(Axis.Even("gap", "mm", 100, 300, 3), Axis.Even("area", "mm2", 10, 20, 2), (g, a, _) => g + a);
        Assert.Equal(220, map.At(1, 1));
        using var writer = new StringWriter();
        map.WriteCsv(writer, new Measure<double>("sum", "-", s => s > 300 ? null : s));
        Assert.Equal("gap [mm],area [mm2],sum [-]\n100,10,110\n200,10,210\n300,10,\n100,20,120\n200,20,220\n300,20,\n", writer.ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => map.At(3, 0));
    }

    [Fact]
    public void A_sweep_can_be_cancelled_and_refuses_parts()
    {
        using var source = new CancellationTokenSource();
        Axis axis = Axis.Even("x", "-", 0, 1, 1000);
        Assert.ThrowsAny<OperationCanceledException>(() => Sweep.Along(axis, (x, _) => x, null, new Listener(_ => source.Cancel()), source.Token));
        InvalidModelException refusal = Assert.Throws<InvalidModelException>(() => Sweep.Along(axis, (x, _) => x, new StudyOptions { Part = new StudyPart(1, 2) }));
        Assert.Equal("STU007", refusal.Findings[0].Code);
    }

    [Fact]
    public void Wrong_axes_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Axis.Even("x", "-", 1, 1, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => Axis.Factors("x", "-", 0, 1, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => Axis.Even("x", "-", 0, 1, 1));
    }
}
