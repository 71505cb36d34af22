using Staging.Core.Solving;

namespace Staging.Core.Tests.Solving;

/// <summary>Linear between the knots, exact on them, and the stated rule beyond the ends.</summary>
public class Table1DTests
{
    private static Table1D Falling(Extrapolation ends) => new([0, 1, 3], [100, 50, 0], ends);

    [Theory]
    [InlineData(0, 100)]
    [InlineData(0.5, 75)]
    [InlineData(1, 50)]
    [InlineData(2, 25)]
    [InlineData(3, 0)]
    public void Linear_between_knots_and_exact_on_them(double at, double expected) => Assert.Equal(expected, Falling(Extrapolation.Refuse).At(at));

    [Fact]
    public void The_last_knot_is_exact_where_a_difference_would_round()
    {
        var table = new Table1D([0, 1], [1e16, 1], Extrapolation.Refuse);
        Assert.Equal(1, table.At(1));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(-1e-300)]
    [InlineData(3.0000000000000004)]
    [InlineData(double.PositiveInfinity)]
    public void Zero_outside(double at) => Assert.Equal(0, Falling(Extrapolation.Zero).At(at));

    [Theory]
    [InlineData(-1, 100)]
    [InlineData(4, 0)]
    [InlineData(double.NegativeInfinity, 100)]
    public void The_end_value_goes_on(double at, double expected) => Assert.Equal(expected, Falling(Extrapolation.Hold).At(at));

    [Theory]
    [InlineData(-1)]
    [InlineData(3.5)]
    public void Outside_is_refused_with_the_range_of_the_table(double at)
    {
        ArgumentOutOfRangeException e = Assert.Throws<ArgumentOutOfRangeException>(() => Falling(Extrapolation.Refuse).At(at));
        Assert.Contains("from 0 to 3", e.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData((int)Extrapolation.Zero)]
    [InlineData((int)Extrapolation.Hold)]
    [InlineData((int)Extrapolation.Refuse)]
    public void Not_a_number_is_refused_by_every_rule(int ends) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Falling((Extrapolation)ends).At(double.NaN));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.99, 0)]
    [InlineData(1, 1)]
    [InlineData(3, 1)]
    public void A_knot_belongs_to_the_piece_on_its_right_and_the_last_to_its_left(double at, int piece) =>
        Assert.Equal(piece, Falling(Extrapolation.Refuse).Segment(at));

    [Fact]
    public void Tables_that_cannot_be_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new Table1D([1], [1], Extrapolation.Hold));
        Assert.Throws<ArgumentException>(() => new Table1D([1, 2], [1], Extrapolation.Hold));
        Assert.Throws<ArgumentException>(() => new Table1D([1, 1], [1, 2], Extrapolation.Hold));
        Assert.Throws<ArgumentException>(() => new Table1D([2, 1], [1, 2], Extrapolation.Hold));
        Assert.Throws<ArgumentException>(() => new Table1D([1, double.NaN], [1, 2], Extrapolation.Hold));
        Assert.Throws<ArgumentException>(() => new Table1D([1, 2], [1, double.PositiveInfinity], Extrapolation.Hold));
    }

    [Fact]
    public void A_table_keeps_its_own_copy()
    {
        double[] y = [1, 2];
        var table = new Table1D([0, 1], y, Extrapolation.Hold);
        y[1] = 5;
        Assert.Equal(2, table.At(1));
    }
}
