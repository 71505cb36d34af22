using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// How an input scatters. Closed: use <see cref="Match"/> to treat every case; <see cref="Spread"/> makes them.
/// </summary>
/// <remarks>
/// Values are drawn by inverse transform, so that the same unit number gives the same value wherever it comes from.
/// </remarks>
public abstract record Distribution
{
    private protected Distribution()
    {
    }

    /// <summary>Whether the values have a lowest and a highest.</summary>
    public abstract bool IsBounded { get; }

    /// <summary>The middle value: half of the cases lie below it; in the unit of the input [Unit].</summary>
    public double Median => At(0.5);

    /// <summary>The value that a share of the cases stays below.</summary>
    /// <param name="probability">The share [-], above 0 and below 1.</param>
    /// <returns>The value in the unit of the input [Unit].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double Quantile(double probability) =>
        At(Guard.In(probability, double.Epsilon, 1 - 1.0 / (1UL << 53), "-", nameof(probability)));

    /// <summary>Treats every case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="uniform">For an even spread.</param>
    /// <param name="normal">For a normal spread.</param>
    /// <param name="truncatedNormal">For a normal spread cut at both ends.</param>
    /// <param name="logNormal">For a spread by factors.</param>
    /// <param name="triangular">For least, likeliest and greatest.</param>
    /// <param name="discrete">For listed values.</param>
    /// <returns>The answer of the case that holds.</returns>
    public T Match<T>(
        Func<Uniform, T> uniform,
        Func<Normal, T> normal,
        Func<TruncatedNormal, T> truncatedNormal,
        Func<LogNormal, T> logNormal,
        Func<Triangular, T> triangular,
        Func<Discrete, T> discrete) => this switch
        {
            Uniform x => uniform(x),
            Normal x => normal(x),
            TruncatedNormal x => truncatedNormal(x),
            LogNormal x => logNormal(x),
            Triangular x => triangular(x),
            Discrete x => discrete(x),
            _ => throw new InvalidOperationException($"Unknown distribution {GetType().Name}."),
        };

    /// <summary>
    /// Kind and numbers as they were given, to the bit: equal for equal spreads alone, and on every machine.
    /// </summary>
    internal string InWords => Match(
        x => Invariant.Text($"uniform from {x.Low:R} to {x.High:R}"),
        x => Invariant.Text($"normal about {x.Mean:R} by {x.StandardDeviation:R}"),
        x => Invariant.Text($"normal about {x.Mean:R} by {x.StandardDeviation:R} from {x.Low:R} to {x.High:R}"),
        x => Invariant.Text($"log-normal about {x.MedianValue:R} by a factor of {x.Factor:R}"),
        x => Invariant.Text($"triangular from {x.Low:R} over {x.Mode:R} to {x.High:R}"),
        x => "listed " + string.Join(' ', x.Values.Zip(x.Weights, (value, weight) => Invariant.Text($"{value:R}:{weight:R}"))));

    /// <summary>The quantile, unchecked.</summary>
    internal abstract double At(double u);

    /// <summary>Every value between two ends is equally likely.</summary>
    public sealed record Uniform : Distribution
    {
        internal Uniform(double low, double high) => (Low, High) = (low, high);

        /// <summary>Lowest value [Unit].</summary>
        public double Low { get; }

        /// <summary>Highest value [Unit].</summary>
        public double High { get; }

        /// <inheritdoc/>
        public override bool IsBounded => true;

        internal override double At(double u) => Low + (High - Low) * u;
    }

    /// <summary>The normal distribution.</summary>
    public sealed record Normal : Distribution
    {
        internal Normal(double mean, double standardDeviation) => (Mean, StandardDeviation) = (mean, standardDeviation);

        /// <summary>Mean [Unit].</summary>
        public double Mean { get; }

        /// <summary>Standard deviation [Unit].</summary>
        public double StandardDeviation { get; }

        /// <inheritdoc/>
        public override bool IsBounded => false;

        internal override double At(double u) => Mean + StandardDeviation * NormalTable.Quantile(u);
    }

    /// <summary>The normal distribution between two ends; what lies outside is not drawn.</summary>
    public sealed record TruncatedNormal : Distribution
    {
        internal TruncatedNormal(double mean, double standardDeviation, double low, double high) =>
            (Mean, StandardDeviation, Low, High) = (mean, standardDeviation, low, high);

        /// <summary>Mean before it was cut [Unit].</summary>
        public double Mean { get; }

        /// <summary>Standard deviation before it was cut [Unit].</summary>
        public double StandardDeviation { get; }

        /// <summary>Lowest value [Unit].</summary>
        public double Low { get; }

        /// <summary>Highest value [Unit].</summary>
        public double High { get; }

        /// <inheritdoc/>
        public override bool IsBounded => true;

        internal override double At(double u) =>
            Math.Clamp(Mean + StandardDeviation * NormalTable.QuantileBetween((Low - Mean) / StandardDeviation,
                (High - Mean) / StandardDeviation, u), Low, High);
    }

    /// <summary>The logarithm is normal: as likely half as twice.</summary>
    public sealed record LogNormal : Distribution
    {
        internal LogNormal(double median, double factor) => (MedianValue, Factor) = (median, factor);

        /// <summary>Median [Unit].</summary>
        public double MedianValue { get; }

        /// <summary>
        /// The factor of one standard deviation [-]: about 68 % of the values lie between the median over it and the
        /// median times it.
        /// </summary>
        public double Factor { get; }

        /// <inheritdoc/>
        public override bool IsBounded => false;

        internal override double At(double u) => MedianValue * Math.Exp(Math.Log(Factor) * NormalTable.Quantile(u));
    }

    /// <summary>
    /// A density that rises evenly from the least to the likeliest value and falls evenly to the greatest.
    /// </summary>
    public sealed record Triangular : Distribution
    {
        internal Triangular(double low, double mode, double high) => (Low, Mode, High) = (low, mode, high);

        /// <summary>Lowest value [Unit].</summary>
        public double Low { get; }

        /// <summary>Likeliest value [Unit].</summary>
        public double Mode { get; }

        /// <summary>Highest value [Unit].</summary>
        public double High { get; }

        /// <inheritdoc/>
        public override bool IsBounded => true;

        /// <remarks>The roots of shares, not of products of widths: those overflow where the widths do not.</remarks>
        internal override double At(double u)
        {
            double width = High - Low, rise = (Mode - Low) / width;
            return u <= rise ? Low + width * Math.Sqrt(u * rise) : High - width * Math.Sqrt((1 - u) * (1 - rise));
        }
    }

    /// <summary>Listed values with their weights.</summary>
    public sealed record Discrete : Distribution
    {
        private readonly ImmutableArray<double> upTo;

        internal Discrete(ImmutableArray<double> values, ImmutableArray<double> weights)
        {
            (Values, Weights) = (values, weights);
            double total = weights.Sum(), sum = 0;
            upTo = [.. weights.Select(w => (sum += w) / total)];
        }

        /// <summary>The values, rising [Unit].</summary>
        public ImmutableArray<double> Values { get; }

        /// <summary>Their weights [-], in the same order; only their ratios count.</summary>
        public ImmutableArray<double> Weights { get; }

        /// <inheritdoc/>
        public override bool IsBounded => true;

        internal override double At(double u)
        {
            int i = 0;
            while (i < Values.Length - 1 && u >= upTo[i])
                i++;
            return Values[i];
        }
    }
}
