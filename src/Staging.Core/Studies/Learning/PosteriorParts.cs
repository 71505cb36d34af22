using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>Makes the parts of a posterior from the weighed cases.</summary>
internal static class PosteriorParts
{
    private const double Low = 0.05, High = 0.95;

    public static LearnedInput Input(Distribution spread, ColumnName name, WeightedInput input, double[] before, CaseWeights after)
    {
        return new LearnedInput(name, Range(before), Range(after.Weights), input.Bits(before, after.Weights, after.EffectiveSampleSize));

        (double, Interval) Range(double[] weights) => (
            spread.At(input.Quantile(weights, 0.5)),
            new Interval(spread.At(input.Quantile(weights, Low)), spread.At(input.Quantile(weights, High)), High - Low));
    }

    public static LearnedObservation Observation(string name, int j, WeighedCases cases, CaseWeights before, CaseWeights after)
    {
        double exponent = after.Exponent;
        double[] logs = cases.Of(j), withRefused = [.. logs.Select((l, i) => cases.IsOut(i) ? double.NegativeInfinity : l)];
        CaseWeights? alone = CaseWeights.Of(cases.Shares, withRefused, exponent);
        CaseWeights others = CaseWeights.Of(cases.Shares, cases.Together(without: j), exponent)!;
        return new LearnedObservation(
            name,
            alone is null ? 0 : Math.Exp((alone.LogSum - before.LogSum) / exponent),
            Math.Exp((after.LogSum - others.LogSum) / exponent),
            alone is null ? 0 : Bits(withRefused, alone, before),
            Bits(logs, after, others),
            Math.Exp(withRefused.Max()));
    }

    /// <summary>Rank correlation of all inputs, row by row [-].</summary>
    public static ImmutableArray<double> Correlation(ImmutableArray<WeightedInput> inputs, double[] weights)
    {
        int k = inputs.Length;
        double[] all = new double[k * k];
        for (int i = 0; i < k; i++)
        {
            all[i * k + i] = 1;
            for (int j = 0; j < i; j++)
                all[i * k + j] = all[j * k + i] = WeightedInput.Correlation(inputs[i], inputs[j], weights);
        }

        return [.. all];
    }

    /// <summary>
    /// Divergence of weights from those that some log-likelihoods would be added to: their mean, less the change of the
    /// sum [bit].
    /// </summary>
    public static double Bits(double[] logs, CaseWeights with, CaseWeights without) =>
        Math.Max(0, with.Exponent * with.Mean(i => logs[i]) - (with.LogSum - without.LogSum)) / Math.Log(2);
}
