using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// The elementary effects of one input, for the range of the input from its lowest to its highest quantile.
/// </summary>
/// <param name="Input">The input.</param>
/// <param name="Mean">Mean of the effects, in the unit of the result [Unit]: near 0 also when effects of both signs
/// cancel.</param>
/// <param name="MeanAbsolute">Mean of their absolute values [Unit]: how much it matters.</param>
/// <param name="StandardDeviation">Their scatter [Unit]: how much it bends, or acts together with others.</param>
/// <param name="MeanAbsoluteInterval">Where the mean of the absolute values lies [Unit], at 95 %, by Student's
/// distribution over the paths.</param>
public sealed record MorrisEffect(ColumnName Input, double Mean, double MeanAbsolute, double StandardDeviation,
    Interval MeanAbsoluteInterval)
{
    internal static MorrisEffect Of(ColumnName input, ImmutableArray<double> effects)
    {
        (double mean, double scatter) = Replicates.MeanAndScatter(effects);
        return new MorrisEffect(input, mean, Replicates.MeanAndScatter([.. effects.Select(Math.Abs)]).Mean, scatter,
            Replicates.Interval([.. effects.Select(Math.Abs)], 0.95));
    }
}
