using System.Globalization;
using Staging.Core.Studies;

namespace Staging.Core.Validation.Published;

/// <summary>Known answers of the generator, and intervals of proportions that other libraries print.</summary>
public class StudiesChecks
{
    private const string Random123 = "J. K. Salmon, M. A. Moraes, R. O. Dror and D. E. Shaw, Random123, known-answer vectors (tests/kat_vectors)";
    private const string Binomial = "values of R's binom.confint and binom.test, printed in the test suite of an open-source statistics library (statsmodels, Python)";

    [Theory]
    [InlineData(7, "00000000 00000000 00000000 00000000", "00000000 00000000", "5f6fb709 0d893f64 4f121f81 4f730a48")]
    [InlineData(7, "ffffffff ffffffff ffffffff ffffffff", "ffffffff ffffffff", "5207ddc2 45165e59 4d8ee751 8c52f662")]
    [InlineData(7, "243f6a88 85a308d3 13198a2e 03707344", "a4093822 299f31d0", "4dfccaba 190a87f0 c47362ba b6b5242a")]
    [InlineData(10, "00000000 00000000 00000000 00000000", "00000000 00000000", "6627e8d5 e169c58d bc57ac4c 9b00dbd8")]
    [InlineData(10, "ffffffff ffffffff ffffffff ffffffff", "ffffffff ffffffff", "408f276d 41c83b0e a20bc7c6 6d5451fd")]
    [InlineData(10, "243f6a88 85a308d3 13198a2e 03707344", "a4093822 299f31d0", "d16cfe09 94fdcceb 5001e420 24126ea1")]
    public void Philox_gives_the_known_answers(int rounds, string counter, string key, string expected)
    {
        uint[] c = Words(counter), k = Words(key), x = Words(expected);
        (uint x0, uint x1, uint x2, uint x3) = Philox4x32.Block(c[0], c[1], c[2], c[3], k[0], k[1], rounds);
        uint[] ours = [x0, x1, x2, x3];
        for (int word = 0; word < 4; word++)
            Check($"Philox 4x32-{rounds}, counter {counter}, key {key}, word {word}", x[word], ours[word], Tolerance.FixedAmount(0, "bits"), Random123, Evidence.SeenInSource);
    }

    [Theory]
    [InlineData(0, 30, 0, 0.11570331, 0, 0.11351339, 8)]
    [InlineData(1, 30, 8.435709e-4, 0.17216946, 5.908590e-3, 0.16670391, 8)]
    [InlineData(4, 20, 0.05733399705003284, 0.436614002996668, 0.0806576625797981, 0.4160174322518935, 13)]
    [InlineData(18, 20, 0.6830172859809176, 0.9876514728297052, 0.6989663547715128, 0.972133518786232, 13)]
    public void Intervals_of_a_proportion(int hits, int cases, double exactLow, double exactHigh, double scoreLow, double scoreHigh, int decimals)
    {
        var proportion = new Proportion(hits, cases);
        Interval exact = proportion.ClopperPearson(), score = proportion.Wilson();
        if (hits == 0)
            Assert.Equal((exactLow, scoreLow), (exact.Low, score.Low));
        else
            Check($"{hits} of {cases}, Clopper-Pearson, lower end at 95 %", exactLow, exact.Low, Tolerance.Printed(decimals), Binomial, Evidence.SeenInSource);
        Check($"{hits} of {cases}, Clopper-Pearson, upper end at 95 %", exactHigh, exact.High, Tolerance.Printed(decimals), Binomial, Evidence.SeenInSource);
        if (hits > 0)
            Check($"{hits} of {cases}, Wilson, lower end at 95 %", scoreLow, score.Low, Tolerance.Printed(decimals), Binomial, Evidence.SeenInSource);
        Check($"{hits} of {cases}, Wilson, upper end at 95 %", scoreHigh, score.High, Tolerance.Printed(decimals), Binomial, Evidence.SeenInSource);
    }

    [Fact]
    public void The_exact_interval_at_99_per_cent()
    {
        const string source = "values of R's binom.test, printed in the test suite of an open-source scientific library (SciPy, Python)";
        Interval exact = new Proportion(3, 50).ClopperPearson(0.99);
        Check("3 of 50, Clopper-Pearson, lower end at 99 %", 0.006872485, exact.Low, Tolerance.Printed(9), source, Evidence.SeenInSource);
        Check("3 of 50, Clopper-Pearson, upper end at 99 %", 0.202706269, exact.High, Tolerance.Printed(9), source, Evidence.SeenInSource);
    }

    internal static void Check(string quantity, double expected, double ours, Tolerance within, string source, Evidence how) =>
        OutsideCheck.Verify("Studies", quantity, "-", expected, ours, within, new Provenance { Source = source, How = how });

    private static uint[] Words(string text) => [.. text.Split(' ').Select(w => uint.Parse(w, NumberStyles.HexNumber, CultureInfo.InvariantCulture))];
}
