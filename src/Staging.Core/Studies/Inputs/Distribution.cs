using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// The distribution of an input, in the unit of that input. Two of one kind and numbers are equal.
/// </summary>
/// <remarks>
/// Values are drawn by inverse transform, so that the same number from the unit interval always gives the same value.
/// </remarks>
public sealed record Distribution
{
    private const double Largest = 1e300;

    private Distribution(DistributionShape shape) => Shape = shape;

    /// <summary>Whether the values have a lowest and a highest.</summary>
    public bool IsBounded => Shape.IsBounded;

    /// <summary>The middle value: half of the cases lie below it; in the unit of the input [Unit].</summary>
    public double Median => At(0.5);

    /// <summary>Kind and numbers.</summary>
    internal DistributionShape Shape { get; }

    /// <summary>Every value between two ends, equally likely.</summary>
    /// <param name="low">Lowest value [Unit].</param>
    /// <param name="high">Highest value [Unit], above the lowest.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ends are not in order.</exception>
    public static Distribution Uniform(double low, double high) =>
        new(new DistributionShape.Uniform(Finite(low, nameof(low)), Guard.Above(high, low, Largest, "-", nameof(high))));

    /// <summary>The normal distribution.</summary>
    /// <param name="mean">Mean [Unit].</param>
    /// <param name="standardDeviation">Standard deviation [Unit], above 0.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The standard deviation is not above 0.</exception>
    public static Distribution Normal(double mean, double standardDeviation) =>
        new(new DistributionShape.Normal(Finite(mean, nameof(mean)),
            Guard.Above(standardDeviation, 0, Largest, "-", nameof(standardDeviation))));

    /// <summary>The normal distribution between two ends, for quantities that have physical limits.</summary>
    /// <param name="mean">Mean before it is cut [Unit]; at most 8 standard deviations outside the ends.</param>
    /// <param name="standardDeviation">Standard deviation before it is cut [Unit], above 0.</param>
    /// <param name="low">Lowest value [Unit].</param>
    /// <param name="high">Highest value [Unit], above the lowest.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Distribution TruncatedNormal(double mean, double standardDeviation, double low, double high)
    {
        Guard.Above(standardDeviation, 0, Largest, "-", nameof(standardDeviation));
        Guard.Above(high, Finite(low, nameof(low)), Largest, "-", nameof(high));
        Guard.In(mean, low - 8 * standardDeviation, high + 8 * standardDeviation, "-", nameof(mean));
        return new Distribution(new DistributionShape.TruncatedNormal(mean, standardDeviation, low, high));
    }

    /// <summary>A spread by factors: half is as likely as twice.</summary>
    /// <param name="median">Median [Unit], above 0.</param>
    /// <param name="factor">The factor of one standard deviation [-], above 1 and at most 1000.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Distribution LogNormal(double median, double factor) =>
        new(new DistributionShape.LogNormal(Guard.Above(median, 0, Largest, "-", nameof(median)),
            Guard.Above(factor, 1, 1000, "-", nameof(factor))));

    /// <summary>
    /// Least, likeliest and greatest value: usually all that can be said of an input set by judgement.
    /// </summary>
    /// <param name="low">Lowest value [Unit].</param>
    /// <param name="mode">Likeliest value [Unit], between the ends.</param>
    /// <param name="high">Highest value [Unit], above the lowest.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The values are not in order.</exception>
    public static Distribution Triangular(double low, double mode, double high)
    {
        Guard.Above(high, Finite(low, nameof(low)), Largest, "-", nameof(high));
        return new Distribution(new DistributionShape.Triangular(low, Guard.In(mode, low, high, "-", nameof(mode)), high));
    }

    /// <summary>Listed values, each with its weight.</summary>
    /// <param name="values">Values [Unit] and weights [-]; weights above 0, only their ratios count.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="ArgumentException">There is no value, or one is listed twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A weight is not above 0.</exception>
    public static Distribution Discrete(params ImmutableArray<(double Value, double Weight)> values)
    {
        if (values.IsDefaultOrEmpty)
            throw new ArgumentException("At least one value is needed.", nameof(values));
        foreach ((double value, double weight) in values)
        {
            Finite(value, nameof(values));
            Guard.Above(weight, 0, Largest, "-", nameof(values));
        }

        ImmutableArray<(double Value, double Weight)> sorted = [.. values.OrderBy(v => v.Value)];
        if (sorted.Zip(sorted.Skip(1)).Any(pair => pair.First.Value.Equals(pair.Second.Value)))
            throw new ArgumentException("A value is listed twice; add its weights.", nameof(values));
        return new Distribution(new DistributionShape.Discrete([.. sorted.Select(v => v.Value)], [.. sorted.Select(v => v.Weight)]));
    }

    /// <summary>A sourced range as least, likeliest and greatest value.</summary>
    /// <param name="range">The range; its nominal value is taken as the likeliest.</param>
    /// <returns>A triangular distribution.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The range is empty, or its nominal value lies outside
    /// it.</exception>
    public static Distribution Of(SourcedRange range)
    {
        ArgumentNullException.ThrowIfNull(range);
        return Triangular(range.Min, range.Nominal, range.Max);
    }

    /// <summary>The value that a share of the cases stays below.</summary>
    /// <param name="probability">The share [-], above 0 and below 1.</param>
    /// <returns>The value in the unit of the input [Unit].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double Quantile(double probability) =>
        At(Guard.In(probability, double.Epsilon, 1 - 1.0 / (1UL << 53), "-", nameof(probability)));

    /// <summary>
    /// Kind and numbers as they were given, exactly: equal only for equal distributions, on every machine.
    /// </summary>
    /// <returns>For example <c>triangular from 10 over 20 to 60</c>.</returns>
    public override string ToString() => Shape.Text;

    /// <summary>The quantile, unchecked.</summary>
    internal double At(double u) => Shape.At(u);

    private static double Finite(double value, string name) => Guard.In(value, -Largest, Largest, "-", name);
}
