using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;

namespace Staging.Core.Studies;

/// <summary>A finished fit.</summary>
/// <typeparam name="T">The model.</typeparam>
public sealed class CalibrationResult<T>
{
    internal CalibrationResult(T fitted, ImmutableArray<FittedInput> inputs, ImmutableArray<double> covariance,
        ImmutableArray<double> correlation, ReadOnlyMemory<double> residuals, double scatter, ImmutableArray<ModelFinding> findings)
    {
        (Fitted, Inputs, Covariance, Correlation) = (fitted, inputs, covariance, correlation);
        (Residuals, ResidualStandardDeviation, Findings) = (residuals, scatter, findings);
    }

    /// <summary>The model with the fitted values.</summary>
    public T Fitted { get; }

    /// <summary>The fitted inputs, in their order.</summary>
    public ImmutableArray<FittedInput> Inputs { get; }

    /// <summary>
    /// Covariance of the estimates row by row, each entry in the product of the units of its two inputs [Unit2].
    /// </summary>
    public ImmutableArray<double> Covariance { get; }

    /// <summary>Correlation of the estimates row by row [-].</summary>
    public ImmutableArray<double> Correlation { get; }

    /// <summary>Measured less fitted, at the times of the trace, in its unit [Unit].</summary>
    public ReadOnlyMemory<double> Residuals { get; }

    /// <summary>Standard deviation of the residuals, over their number less that of the inputs [Unit].</summary>
    public double ResidualStandardDeviation { get; }

    /// <summary>
    /// Findings: inputs that cannot be separated, have no influence, or are at an end; a fit that did not converge.
    /// </summary>
    public ImmutableArray<ModelFinding> Findings { get; }

    /// <summary>The fitted inputs with their standard errors, and the findings, a line each.</summary>
    /// <returns>For example <c>source.fragment-mass: 0.192 +- 0.004 g</c>.</returns>
    public override string ToString() => string.Join('\n', [.. Inputs.Select(i => i.ToString()), .. Findings.Select(f => f.ToString())]);
}

/// <summary>Makes the result of a fit from its minimum.</summary>
internal static class CalibrationResult
{
    /// <summary>
    /// Least singular value of the scaled slopes that still counts, relative to the greatest: below it differences of
    /// slopes are round-off. Values below it are set to it, so that undetermined estimates get a very large error.
    /// </summary>
    private const double MinSingular = 1e-8;

    /// <summary>Round-off of a double [-], 2^-52.</summary>
    private const double RoundOff = 1.0 / (1L << 52);

    /// <summary>Distance from an end, as a share of the range, that counts as being at the end.</summary>
    private const double EndDistance = 1e-4;

    public static CalibrationResult<T> Of<T>(InputSet<T> inputs, FittedRange range, FittedMinimum minimum, CalibrationOptions options)
    {
        int n = minimum.Residuals.Count, k = range.Count;
        double variance = minimum.Residuals.DotProduct(minimum.Residuals) / (n - k);
        double minSlope = MinSlope(n, options) * minimum.Size;
        Matrix<double> shape = InverseOfSquare(minimum.Slopes, minSlope);
        double factor = BetaTable.StudentFactor(n - k, options.Confidence);
        double Entry(int i, int j) => variance * shape[i, j] * range.Width(i) * range.Width(j);
        Matrix<double> correlation = shape.MapIndexed((i, j, v) => i == j ? 1 : v / Math.Sqrt(shape[i, i] * shape[j, j]));
        double[] values = range.Values(minimum.Best);
        ImmutableArray<FittedInput> fitted = [.. inputs.Inputs.Select((input, d) =>
        {
            double error = Math.Sqrt(Entry(d, d));
            bool atEnd = minimum.Best[d] < EndDistance || minimum.Best[d] > 1 - EndDistance;
            return new FittedInput(new ColumnName(input.Path, input.Unit), values[d], error,
                new Interval(values[d] - factor * error, values[d] + factor * error, options.Confidence), atEnd);
        })];
        var findings = new CalibrationFindings(fitted, shape, correlation, minimum.Slopes.ColumnNorms(2), minSlope,
            options.CorrelationLimit);
        return new CalibrationResult<T>(
            inputs.At(values),
            fitted,
            covariance: [.. from i in Enumerable.Range(0, k) from j in Enumerable.Range(0, k) select Entry(i, j)],
            correlation: [.. from i in Enumerable.Range(0, k) from j in Enumerable.Range(0, k) select correlation[i, j]],
            residuals: (minimum.Residuals * minimum.Scale).ToArray(),
            scatter: Math.Sqrt(variance) * minimum.Scale,
            findings: [.. findings.All(minimum.Converged)]);
    }

    /// <summary>
    /// Length of a column of slopes that round-off alone makes: of n values of unit size, over twice the step.
    /// </summary>
    private static double MinSlope(int n, CalibrationOptions options) => Math.Sqrt(n) * RoundOff / (2 * options.SlopeStep);

    /// <summary>
    /// (J' J)^-1 from the singular values of J with its columns scaled to one length; a column of round-off is given
    /// that length.
    /// </summary>
    private static Matrix<double> InverseOfSquare(Matrix<double> slopes, double minSlope)
    {
        Vector<double> norms = slopes.ColumnNorms(2);
        double min = Math.Max(MinSingular * norms.Max(), minSlope);
        double[] lengths = [.. norms.Select(c => Math.Max(c, min))];
        Matrix<double> scaled = slopes.MapIndexed((_, j, v) => v / lengths[j]);
        var singular = scaled.Svd();
        // Columns of length 1 have a greatest singular value of 1 or more; where it is less, no input moves the trace.
        double floor = MinSingular * Math.Max(singular.S[0], 1);
        Matrix<double> inverse = Matrix<double>.Build.Dense(lengths.Length, lengths.Length, 0);
        for (int s = 0; s < singular.S.Count; s++)
        {
            double value = Math.Max(singular.S[s], floor);
            inverse += singular.VT.Row(s).OuterProduct(singular.VT.Row(s)) / (value * value);
        }

        return inverse.MapIndexed((i, j, v) => v / (lengths[i] * lengths[j]));
    }
}
