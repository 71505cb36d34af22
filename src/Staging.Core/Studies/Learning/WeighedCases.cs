using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>The cases of a learning study: where they lie, which were refused, and their log-likelihoods.</summary>
/// <param name="design">Where the cases lie in the unit cube of the inputs.</param>
/// <param name="shares">Which cases were run, and how many each stands for.</param>
/// <param name="refused">Whether the model refused a case.</param>
/// <param name="logLikelihoods">Log-likelihood [-], by observation and case; negative infinity of a case that was not
/// run.</param>
internal sealed class WeighedCases(SampleDesign design, CaseShares shares, bool[] refused, ImmutableArray<double[]> logLikelihoods)
{
    /// <summary>Number of cases.</summary>
    public int Count => refused.Length;

    /// <summary>Which cases were run, and how many each stands for.</summary>
    public CaseShares Shares => shares;

    /// <summary>Number of observations.</summary>
    public int Observations => logLikelihoods.Length;

    /// <summary>Cases that the model refused.</summary>
    public int Refused { get; } = refused.Count(r => r);

    /// <summary>Where the cases lie.</summary>
    public SampleDesign Design => design;

    /// <summary>Whether the model refused a case.</summary>
    public bool IsRefused(int i) => refused[i];

    /// <summary>Whether a case was refused or not run.</summary>
    public bool IsOut(int i) => refused[i] || shares[i] == 0;

    /// <summary>How many cases allow an observation.</summary>
    public int Allowing(int observation) => logLikelihoods[observation].Count(l => l > double.NegativeInfinity);

    /// <summary>Log-likelihoods of one observation.</summary>
    public double[] Of(int observation) => logLikelihoods[observation];

    /// <summary>
    /// Log-likelihood of all observations together, but for one; negative infinity of a case that was refused or not
    /// run.
    /// </summary>
    public double[] Together(int without = -1)
    {
        double[] sum = new double[Count];
        for (int i = 0; i < sum.Length; i++)
            sum[i] = IsOut(i) ? double.NegativeInfinity : 0;
        for (int j = 0; j < logLikelihoods.Length; j++)
        {
            if (j == without)
                continue;
            double[] one = logLikelihoods[j];
            for (int i = 0; i < sum.Length; i++)
                sum[i] += one[i];
        }

        return sum;
    }

    /// <summary>The same cases with the observations of another study of them.</summary>
    public WeighedCases And(WeighedCases other) => new(
        design,
        shares,
        [.. refused.Select((r, i) => r || other.IsRefused(i))],
        [.. logLikelihoods, .. Enumerable.Range(0, other.Observations).Select(other.Of)]);
}
