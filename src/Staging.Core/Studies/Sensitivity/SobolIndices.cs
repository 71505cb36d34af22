using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>Shares of the variance of a result: of each input alone, and of each together with all others.</summary>
/// <remarks>
/// I. M. Sobol, Math. Comput. Simul. 55 (2001) 271-280. First order by the estimator of A. Saltelli et al., Comput.
/// Phys. Commun. 181 (2010) 259-270, table 2 (b), total order by that of M. J. W. Jansen (1999), table 2 (f) there,
/// both about the mean. The two matrices are the halves of a low-discrepancy design; the whole is repeated with
/// independent random shifts, and the repetitions give the interval by Student's distribution.
/// </remarks>
internal static class SobolIndices
{
    private const uint Purpose = 5;

    public static PartitionedStudy<ImmutableArray<SobolIndex>> Study<T>(
        SensitivityStudy<T> study, int rows, int repetitions, double confidence, ulong seed)
    {
        Guard.In(rows, 2, 1_000_000, nameof(rows));
        Guard.In(repetitions, 2, 1000, nameof(repetitions));
        Guard.In(confidence, 0.5, 0.999999, "-", nameof(confidence));
        int k = Guard.In(study.Inputs.Inputs.Length, 1, SobolPoints.MaxDimensions / 2, "inputs");
        ImmutableArray<SampleDesign> designs =
            [.. Enumerable.Range(0, repetitions)
                .Select(r => new SampleDesign(DesignKind.LowDiscrepancy, rows, 2 * k, Philox4x32.Bits(seed, (ulong)r, 0, Purpose)))];
        StudyHeading heading = study.Heading(
            (long)repetitions * rows,
            seed,
            Invariant.Text($"variance shares, {repetitions} times {rows} rows"),
            ["a", "b", .. study.Inputs.Inputs.Select(i => $"a with {i.Path} of b")]);
        return new PartitionedStudy<ImmutableArray<SobolIndex>>(
            heading,
            (i, cancel) => Row(study, designs[(int)(i / rows)], i % rows, cancel),
            results =>
            {
                ImmutableArray<Shares> shares = [.. Enumerable.Range(0, repetitions)
                    .Select(r => Shares.Of(results.AsSpan(r * rows, rows), k))];
                return [.. heading.Inputs.Select((input, d) => new SobolIndex(
                    input,
                    shares.Average(s => s.First[d]),
                    Replicates.Interval([.. shares.Select(s => s.First[d])], confidence),
                    shares.Average(s => s.Total[d]),
                    Replicates.Interval([.. shares.Select(s => s.Total[d])], confidence)))];
            });
    }

    /// <summary>f(A), f(B), and f(A with column d of B) for each d, of one row.</summary>
    private static ImmutableArray<double> Row<T>(SensitivityStudy<T> study, SampleDesign design, long row, CancellationToken cancel)
    {
        int k = study.Inputs.Inputs.Length;
        double Value(int d, int half) => study.Inputs.Inputs[d].Spread.At(design.Unit(row, d + half * k));
        double[] a = [.. Enumerable.Range(0, k).Select(d => Value(d, 0))], b = [.. Enumerable.Range(0, k).Select(d => Value(d, 1))];
        var results = ImmutableArray.CreateBuilder<double>(k + 2);
        results.Add(study.At(a, cancel));
        results.Add(study.At(b, cancel));
        for (int d = 0; d < k; d++)
        {
            cancel.ThrowIfCancellationRequested();
            double own = a[d];
            a[d] = b[d];
            results.Add(study.At(a, cancel));
            a[d] = own;
        }

        return results.MoveToImmutable();
    }

    /// <summary>The indices of one repetition.</summary>
    private sealed record Shares(ImmutableArray<double> First, ImmutableArray<double> Total)
    {
        public static Shares Of(ReadOnlySpan<ImmutableArray<double>> rows, int k)
        {
            int n = rows.Length;
            double sum = 0, squares = 0;
            foreach (ImmutableArray<double> f in rows)
                sum += f[0] + f[1];
            double mean = sum / (2 * n);
            foreach (ImmutableArray<double> f in rows)
                squares += (f[0] - mean) * (f[0] - mean) + (f[1] - mean) * (f[1] - mean);
            double variance = squares / (2 * n);
            if (variance == 0)
                throw new InvalidOperationException("The result is the same at all points: there is no variance to divide.");
            double[] first = new double[k], total = new double[k];
            foreach (ImmutableArray<double> f in rows)
            {
                for (int d = 0; d < k; d++)
                {
                    double change = f[d + 2] - f[0];
                    first[d] += (f[1] - mean) * change / (n * variance);
                    total[d] += change * change / (2 * n * variance);
                }
            }

            return new Shares([.. first], [.. total]);
        }
    }
}
