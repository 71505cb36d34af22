using System.Globalization;
using Staging.Core.Flight;
using UnitsNet;

namespace Staging.Core.Tests.Flight;

public class ThrustHistoryTests
{
    private const string Good = "# invented motor\n\ntime_s,thrust_N\n0,0\n0.1, 12.5\n# a remark\n0.5,8\n1e0,0\n";

    [Fact]
    public void Comments_and_blank_lines_are_passed_over()
    {
        ThrustHistory curve = Read(Good);
        Assert.Equal([0, 0.1, 0.5, 1], curve.Time_s.ToArray());
        Assert.Equal([0, 12.5, 8, 0], curve.Thrust_N.ToArray());
    }

    [Fact]
    public void Figures_follow_from_the_trapezoids()
    {
        ThrustHistory curve = Read(Good);
        Assert.Equal(0.625 + 4.1 + 2, curve.TotalImpulse.NewtonSeconds, 12);
        Assert.Equal(1, curve.BurnTime.Seconds);
        Assert.Equal(6.725, curve.AverageThrust.Newtons, 12);
        Assert.Equal(12.5, curve.PeakThrust.Newtons);
        Assert.Equal(0.625 + 0.5 * (12.5 + 10.25) * 0.2, curve.ImpulseUntil(Duration.FromSeconds(0.3)).NewtonSeconds, 12);
    }

    [Theory]
    [InlineData(-0.1, 0)]
    [InlineData(0, 0)]
    [InlineData(0.05, 6.25)]
    [InlineData(0.1, 12.5)]
    [InlineData(0.75, 4)]
    [InlineData(1, 0)]
    [InlineData(1.5, 0)]
    public void Thrust_is_a_straight_line_between_points_and_zero_outside(double time, double thrust) =>
        Assert.Equal(thrust, Read(Good).At(Duration.FromSeconds(time)).Newtons, 12);

    [Fact]
    public void A_first_point_above_zero_is_a_jump()
    {
        ThrustHistory curve = ThrustHistory.FromColumns([0.2, 1], [5, 5]);
        Assert.Equal(0, curve.At(Duration.FromSeconds(0.199)).Newtons);
        Assert.Equal(5, curve.At(Duration.FromSeconds(0.2)).Newtons);
        Assert.Equal(4, curve.TotalImpulse.NewtonSeconds, 12);
    }

    [Theory]
    [InlineData("", "header 'time_s,thrust_N' is missing")]
    [InlineData("t,F\n0,0\n1,1", "Line 1: the header must read 'time_s,thrust_N'; it reads 't,F'")]
    [InlineData("time_s,thrust_N\n0,0\n1", "Line 3: two columns")]
    [InlineData("time_s,thrust_N\n0,0\n1,2,3", "Line 3: two columns")]
    [InlineData("time_s,thrust_N\n0,0\n0.1,twelve", "Line 3, column thrust_N: 'twelve' is not a number [N]")]
    [InlineData("time_s,thrust_N\n0,0\n# x\nzero,1", "Line 4, column time_s: 'zero' is not a number [s]")]
    [InlineData("time_s,thrust_N\n0,0\n0.2,1\n0.2,3", "Line 4, column time_s: the time is 0.2 s after 0.2 s; times must rise")]
    [InlineData("time_s,thrust_N\n0,0\n0.2,-1\n0.4,3", "Line 3, column thrust_N: the thrust is -1 N")]
    [InlineData("time_s,thrust_N\n0,0\n0.2,NaN\n0.4,3", "Line 3, column thrust_N: the thrust is NaN N")]
    [InlineData("time_s,thrust_N\n-1,0\n0.2,1", "Line 2, column time_s: the time is -1 s")]
    [InlineData("time_s,thrust_N\n0,1", "needs two points or more; it has 1")]
    [InlineData("time_s,thrust_N\n0,0\n1,0", "zero throughout")]
    [InlineData("time_s,thrust_N\n0,1e-12\n1,0", "the total impulse is 5E-13 N s")]
    public void A_bad_text_is_refused_with_line_column_and_value(string text, string message)
    {
        FormatException refusal = Assert.Throws<FormatException>(() => Read(text));
        Assert.Contains(message, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Bad_columns_are_refused()
    {
        Assert.Throws<ArgumentException>(() => ThrustHistory.FromColumns([0, 1], [1]));
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => ThrustHistory.FromColumns([0, 1, 1], [1, 2, 3]));
        Assert.Contains("Point 3", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_comma_culture_changes_nothing()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        CultureInfo.CurrentCulture = comma;
        try
        {
            Assert.Equal(12.5, Read(Good).PeakThrust.Newtons);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Scaling_scales_the_impulse()
    {
        ThrustHistory curve = Read(Good);
        Assert.Equal(2 * curve.TotalImpulse.NewtonSeconds, curve.Scaled(2).TotalImpulse.NewtonSeconds, 12);
        Assert.Throws<ArgumentOutOfRangeException>(() => curve.Scaled(0));
    }

    /// <summary>The good curve has 12.5 N at its highest point and 6.725 N s.</summary>
    [Theory]
    [InlineData(8.1e5, "Point 2, thrust_N: the thrust is 10125000 N; it must be between 0 and 1E+07 N.")]
    [InlineData(1e-10, "Point 1, thrust_N: the total impulse is 6.725E-10 N s; it must be 1E-09 N s or more.")]
    [InlineData(double.Epsilon, "N s; it must be 1E-09 N s or more.")]
    public void A_scaled_curve_keeps_the_rules_of_a_curve(double factor, string says)
    {
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => Read(Good).Scaled(factor));
        Assert.Contains(says, refusal.Message, StringComparison.Ordinal);
    }

    private static ThrustHistory Read(string text) => ThrustHistory.FromCsv(new StringReader(text));
}
