using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>One input at a time about the centre, where every input is at its median: slopes, and the result at both ends.</summary>
public static class Tornado
{
    /// <summary>The two quantiles between which a slope is taken.</summary>
    private const double SlopeFrom = 0.45, SlopeTo = 0.55;

    /// <summary>Runs the inputs one at a time.</summary>
    /// <typeparam name="T">The model.</typeparam>
    /// <param name="study">The study.</param>
    /// <param name="tail">Share of the values beyond each end [-], 0.001 to 0.4: 0.05 runs each input from its 5 % to its 95 %.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="cancellationToken">Stops the study.</param>
    /// <returns>One bar for each input, the longest first.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tail is outside its range.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ImmutableArray<TornadoBar> Bars<T>(
        this SensitivityStudy<T> study, double tail = 0.05, StudyOptions? options = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(study);
        Guard.In(tail, 0.001, 0.4, "-", nameof(tail));
        ImmutableArray<StudyInput<T>> inputs = study.Inputs.Inputs;
        double[] quantiles = [tail, SlopeFrom, SlopeTo, 1 - tail];
        double[] centre = [.. inputs.Select(i => i.Spread.Median)];
        ImmutableArray<double> results = Points.Run(
            1 + quantiles.Length * inputs.Length,
            (i, cancel) => study.At(i == 0 ? centre : With(centre, (int)(i - 1) / quantiles.Length, d => inputs[d].Spread.At(quantiles[(i - 1) % quantiles.Length])), cancel),
            options,
            null,
            cancellationToken);
        TornadoBar Bar(StudyInput<T> input, int d)
        {
            ReadOnlySpan<double> at = results.AsSpan(1 + quantiles.Length * d, quantiles.Length);
            double step = input.Spread.At(SlopeTo) - input.Spread.At(SlopeFrom);
            return new TornadoBar(
                new ColumnName(input.Path, input.Unit), input.Spread.At(tail), input.Spread.At(1 - tail), at[0], results[0], at[3], step > 0 ? (at[2] - at[1]) / step : null);
        }

        return [.. inputs.Select(Bar).OrderByDescending(b => b.Length)];
    }

    private static double[] With(double[] centre, int d, Func<int, double> value)
    {
        double[] changed = [.. centre];
        changed[d] = value(d);
        return changed;
    }
}
