using Staging.Core.Flight;
using UnitsNet;

namespace Staging.Core.Tests.Flight;

public class DragCurveTests
{
    private static readonly DragCurve Curve = new(2, [0.2, 0.5, 0.9, 1.5], [0.4, 0.4, 0.7, 0.5]);

    [Theory]
    [InlineData(0, 0.4)]
    [InlineData(0.2, 0.4)]
    [InlineData(0.7, 0.55)]
    [InlineData(0.9, 0.7)]
    [InlineData(1.2, 0.6)]
    [InlineData(3, 0.5)]
    public void The_lines_are_the_table(double mach, double coefficient) => Assert.Equal(coefficient, Curve.HalfArea(mach), 14);

    [Fact]
    public void A_corner_belongs_to_the_line_above_it_and_lies_inside_it()
    {
        for (int line = 1; line <= 3; line++)
        {
            double corner = Curve[line - 1].High;
            Assert.Equal(line, Curve.LineOf(corner));
            Assert.True(Curve[line].Low < corner);
            Assert.Equal(Curve[line - 1].HalfArea(corner), Curve[line].HalfArea(corner), 14);
        }

        Assert.Equal((double.NegativeInfinity, double.PositiveInfinity), (Curve[0].Low, Curve[3].High));
    }

    [Fact]
    public void Points_on_one_line_make_no_corner()
    {
        var constant = new DragCurve(1, [0, 1, 2], [0.5, 0.5, 0.5]);
        Assert.Equal(DragSegment.Fixed(0.25), constant[0]);
    }

    [Theory]
    [InlineData(new[] { 0.0, 1, 2 }, new[] { 0.5, 0.6 })]
    [InlineData(new[] { 0.0, 1 }, new[] { 0.5, 0.6, 0.7 })]
    [InlineData(new[] { 0.0 }, new[] { 0.5 })]
    [InlineData(new double[0], new double[0])]
    [InlineData(new[] { 0.0, 1, 1 }, new[] { 0.5, 0.6, 0.7 })]
    [InlineData(new[] { -0.1, 1 }, new[] { 0.5, 0.6 })]
    [InlineData(new[] { 0.0, 1 }, new[] { 0.5, -0.6 })]
    public void Columns_that_make_no_table_are_refused(double[] mach, double[] coefficient)
    {
        var refusal = Assert.Throws<ArgumentException>(() => DragTable.FromColumns(Area.FromSquareMeters(1e-3), mach, coefficient));
        Assert.Contains(refusal.ParamName, (IEnumerable<string>)[nameof(mach), nameof(coefficient)]);
    }
}
