using System.Collections.Immutable;
using Staging.Core.Studies;

namespace Staging.Core.Validation.Exact;

/// <summary>Learning from observations where the answer is a closed form: a coin, a straight trace with noise, unequal weights, a noisy wire.</summary>
public class StudiesLearningChecks
{
    private const string Conjugate = "A. Gelman et al., Bayesian Data Analysis, 3rd ed. (2013), section 2.1 and appendix A: a binomial count with an even prior, "
        + "posterior Beta(heads + 1, tails + 1)";

    private const string Linear = "A. Gelman et al., Bayesian Data Analysis, 3rd ed. (2013), section 14.8: linear regression with known variance and a normal prior, "
        + "precision I + X'X/s^2";

    /// <summary>7 heads of 10 tosses; the density that is left is Beta(8, 4).</summary>
    [Fact]
    public void A_coin_follows_the_beta_distribution()
    {
        Posterior<double[]> learned = new LearningStudy<double[]>
        {
            Inputs = new([0.5], new StudyInput<double[]>("heads", "-", Distribution.Uniform(0, 1), (_, v) => [v])),
            Observations = ["seven of ten"],
            LogLikelihoods = (x, _) => [Math.Log(120) + 7 * Math.Log(x[0]) + 3 * Math.Log(1 - x[0])],
            Cases = 8192,
        }.Learn();
        double n = learned.EffectiveSampleSize, deviation = Math.Sqrt(8.0 * 4 / (12 * 12 * 13));
        Check("coin, 7 heads of 10: mean of the posterior", 8.0 / 12, learned.Odds((x, _) => x[0]).After, Sampling(deviation, n), Conjugate);
        Check("coin, 7 heads of 10: 5 % point of the posterior", 0.4356258, learned.Quantile("heads", 0.05), Sampling(Spread(0.05), n), Conjugate + "; quantile of Beta(8, 4) by bisection of the binomial sum");
        Check("coin, 7 heads of 10: median of the posterior", 0.6761955, learned.Quantile("heads", 0.5), Sampling(Spread(0.5), n), Conjugate + "; quantile of Beta(8, 4) by bisection of the binomial sum");
        Check("coin, 7 heads of 10: evidence, every count equally likely", Math.Log(1.0 / 11), learned.LogEvidence, Sampling(1, n), Conjugate);

        // Standard error of a quantile over the density there, of Beta(8, 4).
        static double Spread(double p)
        {
            double x = p == 0.5 ? 0.6761955 : 0.4356258;
            return Math.Sqrt(p * (1 - p)) / (1320 * Math.Pow(x, 7) * Math.Pow(1 - x, 3));
        }
    }

    /// <summary>y = a + b t with noise of 0.3 at eight times; both unknowns normal by 1 before.</summary>
    [Fact]
    public void A_straight_trace_follows_the_normal_distribution()
    {
        const double noise = 0.3;
        double[] t = [.. Enumerable.Range(0, 8).Select(k => 0.25 * k)], y = [.. t.Select((x, k) => 0.6 - 0.8 * x + noise * new CaseDraws(5, (ulong)k).Normal(0))];
        Posterior<ImmutableArray<double>> learned = new LearningStudy<ImmutableArray<double>>
        {
            Inputs = new([0, 0], [.. Enumerable.Range(0, 2).Select(d => new StudyInput<ImmutableArray<double>>(d == 0 ? "a" : "b", "-", Distribution.Normal(0, 1), (x, v) => x.SetItem(d, v)))]),
            Observations = ["trace"],
            LogLikelihoods = (x, _) => [t.Select((s, k) => -0.5 * Math.Pow((y[k] - x[0] - x[1] * s) / noise, 2) - Math.Log(noise * Math.Sqrt(2 * Math.PI))).Sum()],
            Cases = 1 << 16,
        }.Learn();

        // Precision and right side of the normal equations, solved by hand.
        double aa = 1 + t.Length / (noise * noise), ab = t.Sum() / (noise * noise), bb = 1 + t.Sum(s => s * s) / (noise * noise), det = aa * bb - ab * ab;
        double ya = y.Sum() / (noise * noise), yb = y.Zip(t, (v, s) => v * s).Sum() / (noise * noise);
        (double a, double b) = ((bb * ya - ab * yb) / det, (aa * yb - ab * ya) / det);
        (double ofA, double ofB) = (Math.Sqrt(bb / det), Math.Sqrt(aa / det));
        double n = learned.EffectiveSampleSize;
        ReadOnlyMemory<double> w = learned.Weights, va = learned.Values("a"), vb = learned.Values("b");
        double Mean(Func<int, double> f) => Enumerable.Range(0, w.Length).Sum(i => w.Span[i] * f(i));
        double meanA = Mean(i => va.Span[i]), meanB = Mean(i => vb.Span[i]);
        double covariance = Mean(i => (va.Span[i] - meanA) * (vb.Span[i] - meanB));
        Check("trace a + b t: posterior mean of a", a, meanA, Sampling(ofA, n), Linear);
        Check("trace a + b t: posterior mean of b", b, meanB, Sampling(ofB, n), Linear);
        Check("trace a + b t: posterior deviation of a", ofA, Math.Sqrt(Mean(i => Math.Pow(va.Span[i] - meanA, 2))), Sampling(ofA / Math.Sqrt(2), n), Linear);
        Check("trace a + b t: posterior covariance of a and b", -ab / det, covariance, Sampling(ofA * ofB, n), Linear);
        double log = -0.5 * t.Length * Math.Log(2 * Math.PI * noise * noise) - 0.5 * Math.Log(det) - 0.5 * (y.Sum(v => v * v) / (noise * noise) - a * ya - b * yb);
        Check("trace a + b t: logarithm of the evidence", log, learned.LogEvidence, Sampling(1, n), Linear);
    }

    [Fact]
    public void The_effective_number_of_unequal_weights() =>
        Check("effective number of weights 1, 1, 2, 4", 64.0 / 22, CaseWeights.Of(CaseShares.All(4), [0, 0, Math.Log(2), Math.Log(4)], 1)!.EffectiveSampleSize, Tolerance.ClosedForm,
            "L. Kish, Survey Sampling (1965), section 11.7: (sum w)^2/sum w^2");

    /// <summary>One bit, even before, told through a wire that turns it with a probability: 1 - H2(p) of it arrives.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.11)]
    [InlineData(0.25)]
    [InlineData(0.5)]
    public void The_information_of_a_noisy_wire(double turned)
    {
        Posterior<double[]> before = new LearningStudy<double[]>
        {
            Inputs = new([0], new StudyInput<double[]>("bit", "-", Distribution.Discrete((0, 1), (1, 1)), (_, v) => [v])),
            Observations = [],
            LogLikelihoods = (_, _) => [],
            Cases = 256,
        }.Learn();
        double ours = before.Information("wire", (x, _) => x[0] == 0 ? [1 - turned, turned] : [turned, 1 - turned]).Bits;
        double entropy = turned is 0 ? 0 : -turned * Math.Log2(turned) - (1 - turned) * Math.Log2(1 - turned);
        Check($"information through a binary symmetric channel that turns {turned} [bit]", 1 - entropy, ours, Tolerance.FixedAmount(1e-12, "round-off: the bit is even among the cases"),
            "T. M. Cover and J. A. Thomas, Elements of Information Theory, 2nd ed. (2006), section 7.1.4: 1 - H2(p)");
    }

    /// <summary>Three standard errors of the effective number of cases.</summary>
    private static Tolerance Sampling(double deviation, double effective) =>
        Tolerance.FixedAmount(3 * deviation / Math.Sqrt(effective), FormattableString.Invariant($"three standard errors of {effective:F0} effective cases"));

    private static void Check(string quantity, double expected, double ours, Tolerance within, string source) =>
        Published.StudiesChecks.Check(quantity, expected, ours, within, source, Evidence.ComputedFromFormula);
}
