namespace Staging.Core.Studies;

/// <summary>
/// Weights of cases from what they stand for and their log-likelihoods, which may be raised to a power.
/// </summary>
internal sealed class CaseWeights
{
    /// <summary>Least power that is tried [-]: below it, next to nothing of the observations is left.</summary>
    public const double LeastExponent = 0.02;

    /// <summary>Halvings of the bracket of the power: to 2^-40.</summary>
    private const int Halvings = 40;

    /// <summary>Keeps these draws separate from those of a study.</summary>
    private const uint Purpose = 6;

    private CaseWeights(double[] weights, double exponent, double sum, double effective, double logSum)
    {
        (Weights, Exponent, EffectiveSampleSize) = (weights, exponent, effective);
        LogSum = logSum;
        for (int i = 0; i < weights.Length; i++)
            weights[i] /= sum;
    }

    /// <summary>The weights [-]; their sum is 1.</summary>
    public double[] Weights { get; }

    /// <summary>The power to which likelihoods are raised [-].</summary>
    public double Exponent { get; }

    /// <summary>
    /// (sum w)^2 / sum w^2 (L. Kish, Survey Sampling, 1965, section 11.7; for importance weights A. Kong, J. S. Liu and
    /// W. H. Wong, J. Am. Stat. Assoc. 89 (1994) 278-288).
    /// </summary>
    public double EffectiveSampleSize { get; }

    /// <summary>
    /// Logarithm of the sum of the likelihoods, raised to the power, over all that the cases stand for [-].
    /// </summary>
    public double LogSum { get; }

    /// <summary>The weights of likelihoods raised to a power; null where no case has any.</summary>
    public static CaseWeights? Of(CaseShares shares, double[] logs, double exponent)
    {
        double greatest = logs.Max();
        if (double.IsNegativeInfinity(greatest))
            return null;
        double[] weights = new double[logs.Length];
        double sum = 0, squares = 0;
        for (int i = 0; i < logs.Length; i++)
        {
            double w = shares[i] * Math.Exp(exponent * (logs[i] - greatest));
            (weights[i], sum, squares) = (w, sum + w, squares + w * w);
        }

        return new CaseWeights(weights, exponent, sum, sum * sum / squares, Math.Log(sum) + exponent * greatest);
    }

    /// <summary>
    /// The greatest power, 1 at most, that leaves an effective number of cases; null where no case has any likelihood,
    /// or the power would be below <see cref="LeastExponent"/>.
    /// </summary>
    /// <remarks>
    /// Of cases that stand for equally many the effective number falls with the power: d ln n/d b = 2 (E_b[l] -
    /// E_2b[l]), and E rises with b.
    /// </remarks>
    public static CaseWeights? Tempered(CaseShares shares, double[] logs, double effective)
    {
        if (Of(shares, logs, 1) is not { } whole || whole.EffectiveSampleSize >= effective)
            return Of(shares, logs, 1);
        if (Of(shares, logs, LeastExponent)!.EffectiveSampleSize < effective)
            return null;
        double low = LeastExponent, high = 1;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = 0.5 * (low + high);
            if (Of(shares, logs, middle)!.EffectiveSampleSize >= effective)
                low = middle;
            else
                high = middle;
        }

        return Of(shares, logs, low);
    }

    /// <summary>The mean of numbers of the cases.</summary>
    public double Mean(Func<int, double> value)
    {
        double sum = 0;
        for (int i = 0; i < Weights.Length; i++)
        {
            if (Weights[i] > 0)
                sum += Weights[i] * value(i);
        }

        return sum;
    }

    /// <summary>
    /// A number of cases of equal weight: one drawn at random from each equal step of the running sum (G. Kitagawa, J.
    /// Comput. Graph. Stat. 5 (1996) 1-25). The same draws every time.
    /// </summary>
    public int[] Resampled(int count)
    {
        int[] chosen = new int[count];
        double sum = Weights[0];
        int i = 0;
        for (int k = 0; k < count; k++)
        {
            double mark = (k + Philox4x32.Unit(Philox4x32.Bits(0, (ulong)k, 0, Purpose))) / count;
            while (sum < mark && i < Weights.Length - 1)
                sum += Weights[++i];
            chosen[k] = i;
        }

        return chosen;
    }
}
