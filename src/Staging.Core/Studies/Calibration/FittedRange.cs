using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;

namespace Staging.Core.Studies;

/// <summary>
/// Maps each fitted input to 0 ... 1 between the ends of its distribution, so that steps and tolerances mean the same
/// for all.
/// </summary>
internal sealed class FittedRange(ImmutableArray<Distribution> spreads)
{
    public int Count => spreads.Length;

    public double Width(int d) => High(d) - Low(d);

    public double[] Values(Vector<double> z) => [.. spreads.Select((_, d) => Low(d) + Width(d) * Math.Clamp(z[d], 0, 1))];

    public Vector<double> Start() => Vector<double>.Build.Dense(Count, d => (spreads[d].Median - Low(d)) / Width(d));

    /// <summary>Central differences; at an end of a range the step is taken inwards only.</summary>
    public Matrix<double> Slopes(
        Vector<double> z, CalibrationOptions options, Func<Vector<double>, CancellationToken, Vector<double>> curve,
        CancellationToken cancel)
    {
        double[] low = [.. z.Select(v => Math.Max(Math.Clamp(v, 0, 1) - options.SlopeStep, 0))],
            high = [.. z.Select(v => Math.Min(Math.Clamp(v, 0, 1) + options.SlopeStep, 1))];
        ImmutableArray<Vector<double>> curves = PointEvaluator.All(
            2 * Count,
            (i, stop) =>
            {
                Vector<double> at = z.Clone();
                int d = (int)(i / 2);
                at[d] = i % 2 == 0 ? low[d] : high[d];
                return curve(at, stop);
            },
            new StudyOptions { Threads = options.Threads },
            null,
            cancel);
        return Matrix<double>.Build.DenseOfColumnVectors(Enumerable.Range(0, Count)
            .Select(d => (curves[2 * d + 1] - curves[2 * d]) / (high[d] - low[d])));
    }

    private double Low(int d) => spreads[d].At(Philox4x32.Nearest);

    private double High(int d) => spreads[d].At(1 - Philox4x32.Nearest);
}
