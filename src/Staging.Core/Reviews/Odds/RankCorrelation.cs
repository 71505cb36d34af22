using Staging.Core.Studies;

namespace Staging.Core.Reviews;

/// <summary>Rank correlation and its interval.</summary>
internal static class RankCorrelation
{
    /// <summary>
    /// Variance of artanh(r) over n - 3 for ranks, 1.06 (E. C. Fieller, H. O. Hartley and E. S. Pearson, Biometrika 44
    /// (1957) 470-481).
    /// </summary>
    private const double Variance = 1.06;

    private const double Confidence = 0.95;

    /// <summary>Ranks from 1; equal values share the mean of theirs.</summary>
    public static double[] Ranks(double[] values)
    {
        int[] order = [.. Enumerable.Range(0, values.Length).OrderBy(i => values[i])];
        double[] ranks = new double[values.Length];
        for (int first = 0; first < order.Length;)
        {
            int past = first + 1;
            while (past < order.Length && values[order[past]] == values[order[first]])
                past++;
            for (int i = first; i < past; i++)
                ranks[order[i]] = (first + 1 + past) / 2.0;
            first = past;
        }

        return ranks;
    }

    /// <summary>Correlation of two lists of ranks; 0 where one of them does not scatter.</summary>
    public static double Of(double[] a, double[] b)
    {
        double mean = (a.Length + 1) / 2.0, together = 0, ofA = 0, ofB = 0;
        for (int i = 0; i < a.Length; i++)
        {
            double x = a[i] - mean, y = b[i] - mean;
            (together, ofA, ofB) = (together + x * y, ofA + x * x, ofB + y * y);
        }

        return ofA > 0 && ofB > 0 ? Math.Clamp(together / Math.Sqrt(ofA * ofB), -1, 1) : 0;
    }

    /// <summary>Where the true correlation lies at 95 %; anywhere below four cases.</summary>
    public static Interval At95(double r, int n)
    {
        if (n < 4)
            return new Interval(-1, 1, Confidence);
        double z = Math.Atanh(r), reach = NormalTable.Quantile((1 + Confidence) / 2) * Math.Sqrt(Variance / (n - 3));
        return new Interval(Math.Tanh(z - reach), Math.Tanh(z + reach), Confidence);
    }
}
