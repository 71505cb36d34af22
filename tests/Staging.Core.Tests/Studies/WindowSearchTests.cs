using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

public class WindowSearchTests
{
    private static readonly Axis Tenths = Axis.Even("x", "mm", 0, 10, 11);

    [Fact]
    public void Edges_are_found_to_the_width_asked_for_from_the_inside()
    {
        WindowResult result = Sweep.Windows(Tenths, 1e-6, (x, _) => x is > Math.PI and < 7.25);
        Window window = Assert.Single(result.Windows);
        Assert.InRange(window.Low, Math.PI, Math.PI + 1e-6);
        Assert.InRange(window.High, 7.25 - 1e-6, 7.25);
        Assert.False(window.LowIsEndOfSearch || window.HighIsEndOfSearch);
    }

    [Fact]
    public void A_window_open_to_an_end_of_the_search_says_so()
    {
        Window low = Sweep.Windows(Tenths, 0.01, (x, _) => x < 4.4).Widest!, all = Sweep.Windows(Tenths, 0.01, (_, _) => true).Widest!;
        Assert.True(low.LowIsEndOfSearch && !low.HighIsEndOfSearch);
        Assert.Equal("0 (end of the search) to 10 (end of the search)", all.ToString());
    }

    [Fact]
    public void No_window_is_a_result_that_shows_where_it_looked()
    {
        WindowResult result = Sweep.Windows(Tenths, 0.01, (_, _) => false);
        Assert.Equal(11, result.Scan.Length);
        Assert.Empty(result.Windows);
        Assert.Null(result.Widest);
        Assert.Contains(": nowhere from ", result.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Several_windows_come_in_order_and_the_widest_is_named()
    {
        WindowResult result = Sweep.Windows(Tenths, 1e-9, (x, _) => x is (>= 1 and <= 2.5) or (>= 6 and <= 9.5));
        Assert.Equal([1, 6], result.Windows.Select(w => Math.Round(w.Low, 6)));
        Assert.Equal(9.5, result.Widest!.High, 1e-8);
    }

    [Fact]
    public void A_window_between_two_values_of_the_axis_is_missed_as_the_contract_says() =>
        Assert.Empty(Sweep.Windows(Tenths, 0.01, (x, _) => x is > 3.2 and < 3.8).Windows);

    [Fact]
    public void On_an_axis_of_factors_the_edge_width_is_a_factor()
    {
        Axis axis = Axis.Factors("area", "mm2", 0.5, 500, 13);
        Window window = Sweep.Windows(axis, 0.001, (x, _) => x is > 7 and < 70).Widest!;
        Assert.InRange(window.Low, 7, 7 * 1.001);
        Assert.InRange(window.High, 70 / 1.001, 70);
    }

    [Fact]
    public void Threads_change_nothing()
    {
        (double, double) Find(int threads) => Sweep.Windows(Tenths, 1e-12, (x, _) => Math.Sin(x) > 0.3, new StudyOptions { Threads = threads }).Widest is { } w
            ? (w.Low, w.High)
            : throw new InvalidOperationException();
        Assert.Equal(Find(1), Find(2));
        Assert.Equal(Find(1), Find(8));
    }

    [Fact]
    public void An_assured_window_lies_inside_the_nominal_one()
    {
        // Holds when x lies above the limit, a normal number about 5: assured at 90 % above 5 + 1.28 s, with confidence somewhat above that.
        InputSet<Limit> uncertain = new(new Limit(5), new StudyInput<Limit>("limit", "mm", Distribution.Normal(5, 0.5), (l, v) => new Limit(v)));
        var asked = new Assurance { Probability = 0.9, Cases = 2000, Seed = 4 };
        double nominal = Sweep.Windows(Tenths, 1e-6, (x, _) => x > uncertain.Nominal.X).Widest!.Low;
        double assured = Sweep.Windows(Tenths, 1e-6, (x, stop) => asked.Of(uncertain, (l, _) => x > l.X, stop)).Widest!.Low;
        Assert.Equal(5, nominal, 1e-5);
        // Between the 90 % and the 92 % quantile of the limit: 36 hits of 2000, nearly three standard deviations, are the price of the confidence and the draw.
        Assert.InRange(assured, 5 + 0.5 * 1.2816, 5 + 0.5 * 1.4758);
    }

    private sealed record Limit(double X);
}
