using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Staging.Core.Solving;

namespace Staging.Core.Tests.Solving;

/// <summary>The bracket shrinks to the width asked for, around the root, in a bounded count of evaluations, on any function.</summary>
public class BracketedRootTests
{
    private const double Width = 1e-12;

    public static TheoryData<string> Nasty =>
        ["x^9", "x^25", "step", "flat tangents", "tiny", "huge", "pole", "one-sided", "infinite", "kink", "noise"];

    private static Func<double, double> Function(string name, double root) => name switch
    {
        "x^9" => x => Math.Pow(x - root, 9),
        "x^25" => x => Math.Pow(x - root, 25),
        "step" => x => x < root ? -1 : 1,
        "flat tangents" => x => x == root ? 0 : (x - root) * Math.Exp(-1e-4 / ((x - root) * (x - root))) + 1e-290 * (x - root),
        "tiny" => x => 1e-300 * (x - root),
        "huge" => x => 1e300 * (x - root),
        "pole" => x => 1 / (x - root),
        "one-sided" => x => x < root ? -1e-200 : 1e200 * (x - root) + 1,
        "infinite" => x => x < root ? double.NegativeInfinity : double.PositiveInfinity,
        "kink" => x => x < root ? 1e-6 * (x - root) : 1e6 * (x - root),
        _ => x => (x - root) * (2 + Math.Sin(1e9 * x)),
    };

    [Theory]
    [MemberData(nameof(Nasty))]
    public void The_bracket_holds_the_root_and_is_narrow_and_bisection_is_not_outdone_by_more_than_one(string name)
    {
        foreach (double root in new[] { 0.1, 1.0 / 3, 0.5000001, Math.PI / 4, 0.9999 })
        {
            Counted f = new(Function(name, root));
            double fa = f.Inner(0), fb = f.Inner(1);
            (double low, double high) = BracketedRoot.Shrink(ref f, 0, fa, 1, fb, Width);
            Assert.True(low <= root && root <= high, $"{name}: {low:R} {root:R} {high:R}");
            Assert.InRange(high - low, 0, Width);
            Assert.InRange(f.Calls, 0, BracketedRoot.MaxEvaluations(0, 1, Width));
        }
    }

    [Fact]
    public void The_bound_is_that_of_bisection_plus_one() => Assert.Equal(40 + 1, BracketedRoot.MaxEvaluations(0, 1, Width));

    [Fact]
    public void A_simple_root_takes_a_fraction_of_bisection()
    {
        Counted f = new(x => Math.Exp(x) - 2);
        BracketedRoot.Shrink(ref f, 0, f.Inner(0), 1, f.Inner(1), Width);
        Assert.InRange(f.Calls, 3, 10);
    }

    [Fact]
    public void The_tolerance_is_in_the_abscissa_not_in_the_value()
    {
        // 1e-9 (x - 1/2) is below any tolerance on values all along; the root is where it is.
        Counted f = new(x => 1e-9 * (x - 0.5));
        (double low, double high) = BracketedRoot.Shrink(ref f, 0, f.Inner(0), 1.3, f.Inner(1.3), Width);
        Assert.Equal(0.5, low, Width);
        Assert.Equal(0.5, high, Width);
    }

    [Fact]
    public void An_exact_zero_is_both_ends()
    {
        Counted f = new(x => x - 0.5);
        (double low, double high) = BracketedRoot.Shrink(ref f, 0, -0.5, 1, 0.5, Width);
        Assert.Equal(0.5, low);
        Assert.Equal(0.5, high);
    }

    [Fact]
    public void A_width_below_the_spacing_of_numbers_still_ends()
    {
        Counted f = new(x => x - 1e6 - 1.0 / 3);
        (double low, double high) = BracketedRoot.Shrink(ref f, 1e6, -1.0 / 3, 1e6 + 1, 2.0 / 3, 1e-30);
        Assert.InRange(high - low, 0, 1e-9);
        Assert.Equal(1e6 + 1.0 / 3, high, 1e-9);
    }

    [Fact]
    public void Not_a_number_ends_the_search_with_the_bracket_so_far()
    {
        Counted f = new(_ => double.NaN);
        Assert.Equal((0, 1), BracketedRoot.Shrink(ref f, 0, -1, 1, 1, Width));
        Assert.Equal(1, f.Calls);
    }

    [Property(Arbitrary = [typeof(Brackets)], MaxTest = 500)]
    public bool Holds_on_random_brackets_and_powers(Bracket b)
    {
        Counted f = new(x => Math.CopySign(Math.Pow(Math.Abs(x - b.Root), b.Power), x - b.Root));
        double fa = f.Inner(b.Low), fb = f.Inner(b.High);
        (double low, double high) = BracketedRoot.Shrink(ref f, b.Low, fa, b.High, fb, b.Width);
        double min = Math.Max(b.Width, 9e-16 * Math.Max(Math.Abs(b.Low), Math.Abs(b.High)));
        return low <= b.Root && b.Root <= high && high - low <= min && f.Calls <= BracketedRoot.MaxEvaluations(b.Low, b.High, b.Width);
    }

    public sealed record Bracket(double Low, double High, double Root, double Power, double Width);

    public static class Brackets
    {
        public static Arbitrary<Bracket> Arbitrary() =>
            (from low in Between(-100, 100)
             from length in Between(-6, 2)
             from share in Between(0.001, 0.999)
             from power in Between(0.1, 7)
             from width in Between(-12, -7)
             let span = Math.Pow(10, length)
             select new Bracket(low, low + span, low + share * span, power, Math.Pow(10, width))).ToArbitrary();

        private static Gen<double> Between(double lo, double hi) => Gen.Choose(0, int.MaxValue).Select(n => lo + (hi - lo) * n / int.MaxValue);
    }

    private struct Counted(Func<double, double> inner) : IScalarFunction
    {
        public readonly Func<double, double> Inner => inner;

        public int Calls { get; private set; }

        public double At(double x)
        {
            Calls++;
            return inner(x);
        }
    }
}
