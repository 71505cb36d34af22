namespace Staging.Core.Studies;

/// <summary>Kind and numbers of a distribution, and its quantiles.</summary>
internal abstract record DistributionShape
{
    /// <summary>Whether the values have a lowest and a highest.</summary>
    public abstract bool IsBounded { get; }

    /// <summary>Kind and numbers, exactly.</summary>
    public abstract string Text { get; }

    /// <summary>The value that a share u of the cases stays below.</summary>
    public abstract double At(double u);

    /// <summary>Every value between two ends is equally likely.</summary>
    public sealed record Uniform(double Low, double High) : DistributionShape
    {
        public override bool IsBounded => true;

        public override string Text => Invariant.Text($"uniform from {Low:R} to {High:R}");

        public override double At(double u) => Low + (High - Low) * u;
    }

    /// <summary>The normal distribution.</summary>
    public sealed record Normal(double Mean, double StandardDeviation) : DistributionShape
    {
        public override bool IsBounded => false;

        public override string Text => Invariant.Text($"normal about {Mean:R} by {StandardDeviation:R}");

        public override double At(double u) => Mean + StandardDeviation * NormalTable.Quantile(u);
    }

    /// <summary>
    /// The normal distribution between two ends; mean and standard deviation are those before it was cut.
    /// </summary>
    public sealed record TruncatedNormal(double Mean, double StandardDeviation, double Low, double High) : DistributionShape
    {
        public override bool IsBounded => true;

        public override string Text => Invariant.Text($"normal about {Mean:R} by {StandardDeviation:R} from {Low:R} to {High:R}");

        public override double At(double u) =>
            Math.Clamp(Mean + StandardDeviation * NormalTable.QuantileBetween((Low - Mean) / StandardDeviation,
                (High - Mean) / StandardDeviation, u), Low, High);
    }

    /// <summary>The logarithm is normal; the factor is that of one standard deviation.</summary>
    public sealed record LogNormal(double Median, double Factor) : DistributionShape
    {
        public override bool IsBounded => false;

        public override string Text => Invariant.Text($"log-normal about {Median:R} by a factor of {Factor:R}");

        public override double At(double u) => Median * Math.Exp(Math.Log(Factor) * NormalTable.Quantile(u));
    }

    /// <summary>A density that rises linearly to the mode and falls linearly from there.</summary>
    public sealed record Triangular(double Low, double Mode, double High) : DistributionShape
    {
        public override bool IsBounded => true;

        public override string Text => Invariant.Text($"triangular from {Low:R} over {Mode:R} to {High:R}");

        /// <remarks>Uses roots of shares, not of products of widths, which could overflow.</remarks>
        public override double At(double u)
        {
            double width = High - Low, rise = (Mode - Low) / width;
            return u <= rise ? Low + width * Math.Sqrt(u * rise) : High - width * Math.Sqrt((1 - u) * (1 - rise));
        }
    }

    /// <summary>Listed values, rising, with their weights, of which only the ratios count.</summary>
    public sealed record Discrete : DistributionShape
    {
        private readonly EquatableArray<double> upTo;

        public Discrete(EquatableArray<double> values, EquatableArray<double> weights)
        {
            (Values, Weights) = (values, weights);
            double total = weights.Sum(), sum = 0;
            upTo = [.. weights.Select(w => (sum += w) / total)];
        }

        public EquatableArray<double> Values { get; }

        public EquatableArray<double> Weights { get; }

        public override bool IsBounded => true;

        public override string Text => "listed " + string.Join(' ', Values.Zip(Weights, (v, w) => Invariant.Text($"{v:R}:{w:R}")));

        public override double At(double u)
        {
            int low = 0, high = Values.Length - 1;
            while (low < high)
            {
                int middle = (low + high) / 2;
                if (u >= upTo[middle])
                    low = middle + 1;
                else
                    high = middle;
            }

            return Values[low];
        }
    }
}
