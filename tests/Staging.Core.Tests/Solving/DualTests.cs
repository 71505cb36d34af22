using FsCheck;
using FsCheck.Xunit;
using Staging.Core.Solving;

namespace Staging.Core.Tests.Solving;

/// <summary>Numbers that carry derivatives: each rule against its closed form, and values as those of plain numbers to the bit.</summary>
public class DualTests
{
    private const int X = 2, Y = 6;

    private static readonly Dual[] None = [Dual.Variable(1.5, -1), Dual.Variable(1.5, Dual.Places), 1.5];

    public static TheoryData<string, double, double> Rules { get; } = new()
    {
        { "x + y", 1, 1 },
        { "x - y", 1, -1 },
        { "-x", -1, 0 },
        { "x y", 0.7, 1.3 },
        { "x / y", 1 / 0.7, -1.3 / 0.49 },
        { "x + 2", 1, 0 },
        { "2 + x", 1, 0 },
        { "x - 2", 1, 0 },
        { "2 - x", -1, 0 },
        { "x * 2", 2, 0 },
        { "2 * x", 2, 0 },
        { "x / 2", 0.5, 0 },
        { "2 / x", -2 / 1.69, 0 },
        { "root", 0.5 / Math.Sqrt(1.3), 0 },
        { "power", 0.4 * Math.Pow(1.3, -0.6), 0 },
        { "sine", Math.Cos(1.3), 0 },
        { "max", 1, 0 },
        { "min", 0, 1 },
        { "clamped", 0, 0 },
        { "chain", 0.5 / Math.Sqrt(1.3 * 0.7) * 0.7, 0.5 / Math.Sqrt(1.3 * 0.7) * 1.3 },
    };

    [Theory]
    [MemberData(nameof(Rules))]
    public void Every_rule_is_that_of_calculus(string rule, double byX, double byY)
    {
        Dual z = Of<Dual>(rule, Dual.Variable(1.3, X), Dual.Variable(0.7, Y));
        Assert.Equal(byX, z[X], 1e-14);
        Assert.Equal(byY, z[Y], 1e-14);
        for (int place = 0; place < Dual.Places; place++)
            Assert.True(place is X or Y || z[place] == 0, $"nothing stands at place {place}");
        Assert.Equal(Of<Real>(rule, 1.3, 0.7).Value, z.Value);
    }

    [Property]
    public void Values_are_those_of_plain_numbers(NormalFloat one, NormalFloat other)
    {
        (double x, double y) = (one.Get, other.Get);
        foreach ((string rule, _, _) in Rules.Select(r => r.Data))
        {
            if (rule is "root" or "power" or "chain" && !(x > 0 && y > 0))
                continue;
            Assert.Equal(Of<Real>(rule, x, y).Value, Of<Dual>(rule, Dual.Variable(x, 0), Dual.Variable(y, 7)).Value);
        }
    }

    [Fact]
    public void A_place_that_is_not_there_makes_a_constant()
    {
        foreach (Dual constant in None)
            for (int place = 0; place < Dual.Places; place++)
                Assert.Equal(0, constant[place]);
    }

    [Fact]
    public void The_root_of_zero_has_no_derivative_to_speak_of()
    {
        Dual root = Dual.Sqrt(Dual.Variable(0, X));
        Assert.Equal((0, 0), (root.Value, root[X]));
    }

    [Fact]
    public void Of_equal_numbers_the_first_is_taken()
    {
        Dual one = Dual.Variable(1, X), other = Dual.Variable(1, Y);
        foreach (string rule in (string[])["max", "min"])
            Assert.Equal((1, 0), (Of<Dual>(rule, one, other)[X], Of<Dual>(rule, one, other)[Y]));
    }

    private static T Of<T>(string rule, T x, T y)
        where T : struct, IReal<T> => rule switch
        {
            "x + y" => x + y,
            "x - y" => x - y,
            "-x" => -x,
            "x y" => x * y,
            "x / y" => x / y,
            "x + 2" => x + 2,
            "2 + x" => 2 + x,
            "x - 2" => x - 2,
            "2 - x" => 2 - x,
            "x * 2" => x * 2,
            "2 * x" => 2 * x,
            "x / 2" => x / 2,
            "2 / x" => 2 / x,
            "root" => T.Sqrt(x),
            "power" => T.Pow(x, 0.4),
            "sine" => T.Sin(x),
            "max" => T.Max(x, y),
            "min" => T.Min(x, y),
            "clamped" => T.Clamp(x, 0, 1),
            "chain" => T.Sqrt(x * y),
            _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, null),
        };
}
