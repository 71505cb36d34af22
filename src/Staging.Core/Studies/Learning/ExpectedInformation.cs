using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>How much an observation that has not been made is expected to teach.</summary>
public sealed class ExpectedInformation
{
    internal ExpectedInformation(string name, double bits, ImmutableArray<double> probabilities) =>
        (Name, Bits, Probabilities) = (name, bits, probabilities);

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>
    /// Information shared by outcome and inputs [bit], 0 at least: the entropy of the outcome less what of it would be
    /// left if all inputs were known (D. V. Lindley, Ann. Math. Stat. 27 (1956) 986-1005).
    /// </summary>
    public double Bits { get; }

    /// <summary>Probability of each class of outcome as believed now [-].</summary>
    public ImmutableArray<double> Probabilities { get; }

    /// <summary>Name and information on one line.</summary>
    /// <returns>For example <c>900 mm: 0.31 bit</c>.</returns>
    public override string ToString() => Invariant.Text($"{Name}: {Bits:F3} bit");

    /// <summary>The information of classes whose probabilities are known in each case.</summary>
    /// <param name="name">The name.</param>
    /// <param name="classes">Probability of each class, by case [-].</param>
    /// <param name="weights">Weight of each case [-].</param>
    internal static ExpectedInformation Of(string name, ImmutableArray<ImmutableArray<double>> classes, double[] weights)
    {
        double[] mean = new double[classes[0].Length];
        double left = 0, total = weights.Sum();
        for (int i = 0; i < classes.Length; i++)
        {
            double w = weights[i] / total;
            left += w * Entropy(classes[i].AsSpan());
            for (int k = 0; k < mean.Length; k++)
                mean[k] += w * classes[i][k];
        }

        return new ExpectedInformation(name, Math.Max(0, Entropy(mean) - left), [.. mean]);
    }

    /// <summary>-sum p log2 p [bit] (C. E. Shannon, Bell Syst. Tech. J. 27 (1948) 379-423).</summary>
    private static double Entropy(ReadOnlySpan<double> p)
    {
        double bits = 0;
        foreach (double x in p)
            bits -= x > 0 ? x * Math.Log2(x) : 0;
        return bits;
    }
}
