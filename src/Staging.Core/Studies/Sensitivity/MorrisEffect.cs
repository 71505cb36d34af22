using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// The elementary effects of one input, for the range of the input from its lowest to its highest quantile; of an input
/// without ends from its 1 % to its 99 % quantile.
/// </summary>
public sealed class MorrisEffect
{
    /// <param name="input">The input.</param>
    /// <param name="effects">Its effect along each path.</param>
    internal MorrisEffect(ColumnName input, ImmutableArray<double> effects)
    {
        ImmutableArray<double> sizes = [.. effects.Select(Math.Abs)];
        Input = input;
        (Mean, StandardDeviation) = Replicates.MeanAndScatter(effects);
        MeanAbsolute = Replicates.MeanAndScatter(sizes).Mean;
        MeanAbsoluteInterval = Replicates.Interval(sizes, 0.95);
    }

    /// <summary>The input.</summary>
    public ColumnName Input { get; }

    /// <summary>Mean of the effects, in the unit of the result [Unit]: near 0 also when effects of both signs
    /// cancel.</summary>
    public double Mean { get; }

    /// <summary>Mean of their absolute values [Unit]: how much it matters.</summary>
    public double MeanAbsolute { get; }

    /// <summary>Their scatter [Unit], with n - 1: how far it is from linear, or interacts with others.</summary>
    public double StandardDeviation { get; }

    /// <summary>Confidence interval of the mean of the absolute values [Unit], at 95 %, by Student's distribution over
    /// the paths.</summary>
    public Interval MeanAbsoluteInterval { get; }

    /// <summary>How much the input matters and how its effect scatters, on one line.</summary>
    /// <returns>For example <c>joint.breakaway: effect 12.4 +- 1.1, scatter 3.2</c>.</returns>
    public override string ToString() =>
        Invariant.Text($"{Input.Name}: effect {MeanAbsolute:G4} +- {MeanAbsoluteInterval.HalfWidth:G2}, scatter {StandardDeviation:G3}");
}
