using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>Mean of independent repetitions and its interval by Student's distribution.</summary>
internal static class Replicates
{
    public static (double Mean, double Scatter) MeanAndScatter(ImmutableArray<double> values)
    {
        double mean = values.Average();
        return (mean, Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Length - 1)));
    }

    public static Interval Interval(ImmutableArray<double> values, double confidence)
    {
        (double mean, double scatter) = MeanAndScatter(values);
        double reach = BetaTable.StudentFactor(values.Length - 1, confidence) * scatter / Math.Sqrt(values.Length);
        return new Interval(mean - reach, mean + reach, confidence);
    }
}
