using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// The cases that answer a question, each run once, with their weights before and after the observations: all of them,
/// or the first that have weight before and some drawn by weight after.
/// </summary>
internal sealed class PickedCases
{
    /// <summary>Fewest runs of a question.</summary>
    private const int MinRuns = 10;

    /// <summary>How far probabilities of classes may be from a sum of 1 [-]: round-off.</summary>
    private const double SumError = 1e-9;

    private PickedCases(int[] cases, double[] before, double[] after, double sizeBefore, double sizeAfter) =>
        (Cases, Before, After, SizeBefore, SizeAfter) = (cases, before, after, sizeBefore, sizeAfter);

    /// <summary>Numbers of the cases, rising.</summary>
    public int[] Cases { get; }

    /// <summary>Their weights before [-].</summary>
    public double[] Before { get; }

    /// <summary>Their weights after [-].</summary>
    public double[] After { get; }

    /// <summary>Effective number of cases before [-].</summary>
    public double SizeBefore { get; }

    /// <summary>Effective number of cases after [-].</summary>
    public double SizeAfter { get; }

    /// <summary>Picks cases.</summary>
    /// <param name="shares">Which cases were run.</param>
    /// <param name="before">Weights before.</param>
    /// <param name="after">Weights after.</param>
    /// <param name="runs">How many at most, about; null for all.</param>
    /// <param name="afterAlone">Whether nothing is asked of the weights before.</param>
    public static PickedCases Of(CaseShares shares, CaseWeights before, CaseWeights after, int? runs, bool afterAlone)
    {
        int all = before.Weights.Length;
        if (runs is { } asked)
            Guard.In(asked, MinRuns, (int)StudySize.MaxPoints, nameof(runs));
        double[] first = before.Weights, second = after.Weights;
        double sizeBefore = before.EffectiveSampleSize, sizeAfter = after.EffectiveSampleSize;
        if (runs is { } few && few < shares.Runs)
        {
            int each = afterAlone ? few : few / 2, left = each;
            first = [.. before.Weights.Select((w, i) => w > 0 && left-- > 0 ? w : 0)];
            second = new double[all];
            foreach (int i in after.Resampled(each))
                second[i] += 1.0 / each;
            sizeBefore = Math.Pow(first.Sum(), 2) / first.Sum(w => w * w);
            sizeAfter = 1 / (1 / sizeAfter + 1.0 / each);
        }

        int[] cases = [.. Enumerable.Range(0, all).Where(i => second[i] > 0 || (first[i] > 0 && !afterAlone))];
        return new PickedCases(cases, [.. cases.Select(i => first[i])], [.. cases.Select(i => second[i])], sizeBefore, sizeAfter);
    }

    /// <summary>A probability of one case; not-a-number where the model refuses it.</summary>
    public static double Share(Func<double> probability)
    {
        try
        {
            double p = probability();
            return p is >= 0 and <= 1 ? p : throw new ArithmeticException(Invariant.Text($"The probability {p:G6} is not from 0 to 1."));
        }
        catch (ArgumentException)
        {
            return double.NaN;
        }
    }

    /// <summary>Probabilities of classes, checked.</summary>
    public static ImmutableArray<double> Classes(ImmutableArray<double> p) =>
        !p.IsDefaultOrEmpty && p.All(x => x >= 0) && Math.Abs(p.Sum() - 1) <= SumError
            ? p
            : throw new ArithmeticException("The probabilities of the classes have to be 0 or more and sum to 1.");

    /// <summary>The odds from the probabilities of the cases.</summary>
    public LearnedOdds Odds(ReadOnlySpan<double> probabilities)
    {
        double before = 0, after = 0, ofBefore = 0, ofAfter = 0;
        long refused = 0;
        for (int i = 0; i < Cases.Length; i++)
        {
            refused += double.IsNaN(probabilities[i]) ? 1 : 0;
            double p = double.IsNaN(probabilities[i]) ? 0 : probabilities[i];
            (before, ofBefore) = (before + Before[i] * p, ofBefore + Before[i]);
            (after, ofAfter) = (after + After[i] * p, ofAfter + After[i]);
        }

        return new LearnedOdds(before / ofBefore, SizeBefore, after / ofAfter, SizeAfter, refused);
    }
}
