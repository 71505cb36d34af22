namespace Staging.Core.Studies;

/// <summary>The weights of the cases of a posterior, before and after.</summary>
internal sealed class PosteriorWeights
{
    /// <summary>Least share of the cases that were run and are possible which has to be left [-].</summary>
    private const double LeastShare = 0.1;

    /// <summary>
    /// Least share of the effective number that those cases have before any observation, by what they stand for [-].
    /// </summary>
    private const double LeastOfShares = 0.5;

    private PosteriorWeights(double[] prior, CaseWeights before, CaseWeights after, double logSumBefore) =>
        (Prior, Before, After, LogSumBefore) = (prior, before, after, logSumBefore);

    /// <summary>
    /// What is believed before, as weights of the cases [-]: of the whole design where none was refused.
    /// </summary>
    public double[] Prior { get; }

    /// <summary>The same of the first cases alone, a plain sample whose models can be run.</summary>
    public CaseWeights Before { get; }

    /// <summary>What is believed after.</summary>
    public CaseWeights After { get; }

    /// <summary>Logarithm of how many cases all stand for [-].</summary>
    public double LogSumBefore { get; }

    /// <summary>Weighs the cases.</summary>
    /// <exception cref="InvalidModelException">No case fits, or so few that no power of the likelihoods helps.
    /// </exception>
    public static PosteriorWeights Of<T>(LearningStudy<T> study, WeighedCases cases)
    {
        CaseShares shares = cases.Shares;
        double[] logs = cases.Together(), blank = [.. logs.Select((_, i) => cases.IsOut(i) ? double.NegativeInfinity : 0)];
        CaseWeights all = CaseWeights.Of(shares, blank, 1) ?? throw PosteriorFindings.AllRefused(study);
        bool noneRefused = cases.Refused == 0;
        double[] prior = noneRefused ? CaseWeights.Of(CaseShares.All(cases.Count), new double[cases.Count], 1)!.Weights : all.Weights;
        return new PosteriorWeights(
            prior,
            CaseWeights.Of(shares.First, blank, 1) ?? all,
            CaseWeights.Tempered(shares, logs, LeastNumber(study, cases, logs))
                ?? throw PosteriorFindings.TooSharp(study.Observations.Items, cases, CaseWeights.Of(shares, logs, 1)!),
            noneRefused ? Math.Log(cases.Count) : all.LogSum);
    }

    /// <summary>
    /// The effective number that is asked for; less where few cases are possible, or stand for very unequal numbers.
    /// </summary>
    private static double LeastNumber<T>(LearningStudy<T> study, WeighedCases cases, double[] logs)
    {
        double[] possible = [.. logs.Select(l => l > double.NegativeInfinity ? 0 : l)];
        CaseWeights weights = CaseWeights.Of(cases.Shares, possible, 1)
            ?? throw PosteriorFindings.NothingFits(study.Observations.Items, cases);
        int count = possible.Count(l => l == 0);
        double fewest = Math.Min(LeastShare * count, LeastOfShares * weights.EffectiveSampleSize);
        return Math.Min(study.EffectiveSample, Math.Max(Math.Min(2, 0.5 * count), fewest));
    }
}
