using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// One input at a time about the centre, where every input is at its median: slopes, and the result at both ends.
/// </summary>
internal static class Tornado
{
    /// <summary>The two quantiles between which a slope is taken.</summary>
    private const double SlopeFrom = 0.45, SlopeTo = 0.55;

    public static PartitionedStudy<ImmutableArray<TornadoBar>> Study<T>(SensitivityStudy<T> study, double tail)
    {
        Guard.In(tail, 0.001, 0.4, "-", nameof(tail));
        EquatableArray<StudyInput<T>> inputs = study.Inputs.Inputs;
        double[] quantiles = [tail, SlopeFrom, SlopeTo, 1 - tail];
        double[] centre = [.. inputs.Select(i => i.Spread.Median)];
        StudyHeading heading = study.Heading(1 + quantiles.Length * inputs.Length, 0, Invariant.Text($"tornado with tails of {tail:R}"),
            ["result"]);
        return new PartitionedStudy<ImmutableArray<TornadoBar>>(
            heading,
            (i, cancel) => [study.At(i == 0
                ? centre
                : With(centre, (int)(i - 1) / quantiles.Length, d => inputs[d].Spread.At(quantiles[(i - 1) % quantiles.Length])), cancel)],
            results => [.. inputs.Select((input, d) => Bar(input.Spread, heading.Inputs[d], tail, results[0][0], At(results, d)))
                .OrderByDescending(b => b.Length)]);

        double[] At(ImmutableArray<ImmutableArray<double>> results, int d) =>
            [.. results.Slice(1 + quantiles.Length * d, quantiles.Length).Select(r => r[0])];
    }

    /// <summary>The bar of an input from its results at the four quantiles.</summary>
    private static TornadoBar Bar(Distribution spread, ColumnName input, double tail, double centre, double[] at)
    {
        double low = spread.At(tail), high = spread.At(1 - tail), step = spread.At(SlopeTo) - spread.At(SlopeFrom);
        double? slope = step > 0 ? (at[2] - at[1]) / step : null;
        // The error of a central difference is proportional to the square of its width: the chord between the ends
        // gives its size.
        double wider = (high - low) / step * ((high - low) / step);
        double? error = slope is { } narrow && wider > 1 ? Math.Abs((at[3] - at[0]) / (high - low) - narrow) / (wider - 1) : null;
        return new TornadoBar(input, low, high, at[0], centre, at[3], slope, error);
    }

    private static double[] With(double[] centre, int d, Func<int, double> value)
    {
        double[] changed = [.. centre];
        changed[d] = value(d);
        return changed;
    }
}
