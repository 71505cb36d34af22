using System.Collections.Immutable;
using Staging.Core.Studies;
using Staging.Core.Validation.Published;

namespace Staging.Core.Validation.Exact;

/// <summary>
/// Variance shares of two test functions whose shares are known in closed form. The estimate is random, so it is compared within its own interval
/// at 99.9 %; a second line bounds that interval, or the comparison would mean nothing.
/// </summary>
public class StudiesSensitivityChecks
{
    private const int Repetitions = 16;

    [Fact]
    public void Shares_of_the_Ishigami_function()
    {
        // f = sin x1 + a sin^2 x2 + b x3^4 sin x1 with a = 7, b = 0.1, x even between -pi and pi.
        const double a = 7, b = 0.1;
        double pi4 = Math.Pow(Math.PI, 4), v1 = 0.5 * Math.Pow(1 + b * pi4 / 5, 2), v2 = a * a / 8, v13 = b * b * pi4 * pi4 * (1 / 18.0 - 1 / 50.0), total = v1 + v2 + v13;
        ImmutableArray<SobolIndex> shares = Shares(
            3, -Math.PI, Math.PI, x => Math.Sin(x[0]) + a * Math.Pow(Math.Sin(x[1]), 2) + b * Math.Pow(x[2], 4) * Math.Sin(x[0]), 8192);
        string source = "T. Ishigami and T. Homma, ISUMA (1990); closed form of the variance D = a^2/8 + b pi^4/5 + b^2 pi^8/18 + 1/2";
        Compare("Ishigami function (a 7, b 0.1)", shares, [v1 / total, v2 / total, 0], [(v1 + v13) / total, v2 / total, v13 / total], 0.01, source);
    }

    [Fact]
    public void Shares_of_the_G_function()
    {
        // f = product of (|4 x - 2| + a)/(1 + a), x even between 0 and 1; V = 1/(3 (1 + a)^2).
        double[] a = [0, 0.5, 3, 9, 99, 99];
        double[] v = [.. a.Select(c => 1 / (3 * (1 + c) * (1 + c)))];
        double total = v.Aggregate(1.0, (p, x) => p * (1 + x)) - 1;
        ImmutableArray<SobolIndex> shares = Shares(6, 0, 1, x => a.Select((c, d) => (Math.Abs(4 * x[d] - 2) + c) / (1 + c)).Aggregate((p, f) => p * f), 1024);
        string source = "A. Saltelli and I. M. Sobol (1995), G function; closed form D = product(1 + V_i) - 1, total share V_i product(1 + V_j)/D";
        Compare("G function (a 0, 0.5, 3, 9, 99, 99)", shares, [.. v.Select(x => x / total)], [.. v.Select(x => x * (1 + total) / (1 + x) / total)], 0.02, source);
    }

    private static ImmutableArray<SobolIndex> Shares(int inputs, double low, double high, Func<ImmutableArray<double>, double> f, int rows)
    {
        ImmutableArray<double> origin = [.. new double[inputs]];
        var study = new SensitivityStudy<ImmutableArray<double>>
        {
            Inputs = new(origin, [.. Enumerable.Range(0, inputs).Select(d => new StudyInput<ImmutableArray<double>>($"x{d + 1}", "-", Distribution.Uniform(low, high), (x, v) => x.SetItem(d, v)))]),
            Unit = "-",
            Model = (x, _) => f(x),
        };
        return study.VarianceShares(rows, Repetitions, confidence: 0.999, seed: 1);
    }

    private static void Compare(string name, ImmutableArray<SobolIndex> shares, double[] first, double[] total, double widest, string source)
    {
        for (int d = 0; d < shares.Length; d++)
        {
            Interval alone = shares[d].FirstInterval, together = shares[d].TotalInterval;
            Assert.InRange(Math.Max(alone.HalfWidth, together.HalfWidth), 0, widest);
            StudiesChecks.Check($"{name}, share of x{d + 1} alone", first[d], shares[d].First, Tolerance.FixedAmount(alone.HalfWidth, "half of the 99.9 % interval of 16 repetitions"), source, Evidence.ComputedFromFormula);
            StudiesChecks.Check($"{name}, total share of x{d + 1}", total[d], shares[d].Total, Tolerance.FixedAmount(together.HalfWidth, "half of the 99.9 % interval of 16 repetitions"), source, Evidence.ComputedFromFormula);
        }
    }
}
