namespace Staging.Core.Studies;

/// <summary>
/// One input over the weighed cases, as its place in the unit interval, where it is even before anything was observed.
/// </summary>
internal sealed class WeightedInput
{
    /// <summary>Most and fewest bins of a histogram.</summary>
    private const int MaxBins = 16, MinBins = 4;

    private readonly double[] places;
    private readonly int[] order;

    public WeightedInput(SampleDesign design, int dimension)
    {
        places = new double[design.Points];
        for (int i = 0; i < places.Length; i++)
            places[i] = design.Unit(i, dimension);
        order = [.. Enumerable.Range(0, places.Length)];
        Array.Sort((double[])places.Clone(), order);
    }

    /// <summary>Place of a case [-], 0 to 1.</summary>
    public double this[int i] => places[i];

    /// <summary>
    /// The place below which a share of the weight lies: straight between the middles of the steps of the running sum.
    /// </summary>
    public double Quantile(double[] weights, double share)
    {
        double sum = 0, before = double.NaN, placeBefore = 0;
        foreach (int i in order)
        {
            if (weights[i] == 0)
                continue;
            double middle = sum + 0.5 * weights[i];
            sum += weights[i];
            if (middle >= share)
                return double.IsNaN(before) ? places[i] : placeBefore + (places[i] - placeBefore) * (share - before) / (middle - before);
            (before, placeBefore) = (middle, places[i]);
        }

        return placeBefore;
    }

    /// <summary>
    /// How far the weights moved the input, sum p log2(p/q) over a histogram of both (S. Kullback and R. A. Leibler,
    /// Ann. Math. Stat. 22 (1951) 79-86), less what chance alone gives: (bins - 1)/(2 n), as of a likelihood-ratio
    /// test.
    /// </summary>
    /// <returns>Bits; 0 at least.</returns>
    public double Bits(double[] before, double[] after, double effective)
    {
        int bins = Math.Clamp((int)Math.Sqrt(effective), MinBins, MaxBins);
        Span<double> p = stackalloc double[MaxBins], q = stackalloc double[MaxBins];
        p.Clear();
        q.Clear();
        for (int i = 0; i < places.Length; i++)
        {
            int bin = Math.Min((int)(places[i] * bins), bins - 1);
            (p[bin], q[bin]) = (p[bin] + after[i], q[bin] + before[i]);
        }

        double nats = 0;
        for (int b = 0; b < bins; b++)
        {
            if (p[b] > 0)
                nats += p[b] * Math.Log(p[b] / q[b]);
        }

        return Math.Max(0, nats - (bins - 1) / (2 * effective)) / Math.Log(2);
    }

    /// <summary>
    /// Correlation of the places of two inputs under weights [-]: that of ranks, since places are ranks.
    /// </summary>
    public static double Correlation(WeightedInput one, WeightedInput other, double[] weights)
    {
        double a = 0, b = 0;
        for (int i = 0; i < weights.Length; i++)
            (a, b) = (a + weights[i] * one.places[i], b + weights[i] * other.places[i]);
        double ab = 0, aa = 0, bb = 0;
        for (int i = 0; i < weights.Length; i++)
        {
            double x = one.places[i] - a, y = other.places[i] - b, w = weights[i];
            (ab, aa, bb) = (ab + w * x * y, aa + w * x * x, bb + w * y * y);
        }

        return aa > 0 && bb > 0 ? Math.Clamp(ab / Math.Sqrt(aa * bb), -1, 1) : 0;
    }
}
