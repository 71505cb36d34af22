using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Staging.Core.Solving;

/// <summary>
/// Weighted sums of rows of equal length, such as the slopes of the stages of a one-step method, in vector lanes. Each
/// element is summed in the order of the rows, each product rounded once with the sum it joins, so lanes and scalars
/// give the same bits. Where the last lanes would reach beyond the row they are moved back, and write some elements
/// twice.
/// </summary>
internal static class WeightedRows
{
    /// <summary>Writes y + h (w0 row0 + w1 row1 + ...).</summary>
    /// <param name="y">What is added to.</param>
    /// <param name="h">Factor on the sum.</param>
    /// <param name="weights">One weight a row.</param>
    /// <param name="rows">The rows one after another, each as long as <paramref name="result"/>, at least as many as
    /// weights.</param>
    /// <param name="result">Receives the sum; may overlap neither the rows nor <paramref name="y"/>.</param>
    public static void AddTo(ReadOnlySpan<double> y, double h, ReadOnlySpan<double> weights, ReadOnlySpan<double> rows, Span<double> result)
    {
        int n = result.Length;
        Check(weights, rows, n);
        ArgumentOutOfRangeException.ThrowIfNotEqual(y.Length, n);
        ref double row = ref MemoryMarshal.GetReference(rows), from = ref MemoryMarshal.GetReference(y),
            to = ref MemoryMarshal.GetReference(result);
        var factor = new Vector<double>(h);
        int last = n - Vector<double>.Count;
        for (int i = 0; last >= 0 && i < n; i += Vector<double>.Count)
        {
            int at = Math.Min(i, last);
            Vector.FusedMultiplyAdd(factor, Sum(weights, ref row, n, at), Vector.LoadUnsafe(ref from, (nuint)at)).StoreUnsafe(ref to,
                (nuint)at);
        }

        for (int i = last >= 0 ? n : 0; i < n; i++)
            result[i] = Math.FusedMultiplyAdd(h, Single(weights, rows, n, i), y[i]);
    }

    /// <summary>Writes h (w0 row0 + w1 row1 + ...).</summary>
    /// <param name="h">Factor on the sum.</param>
    /// <param name="weights">One weight a row.</param>
    /// <param name="rows">The rows one after another, each as long as <paramref name="result"/>, at least as many as
    /// weights.</param>
    /// <param name="result">Receives the sum; may not overlap the rows.</param>
    public static void Write(double h, ReadOnlySpan<double> weights, ReadOnlySpan<double> rows, Span<double> result)
    {
        int n = result.Length;
        Check(weights, rows, n);
        ref double row = ref MemoryMarshal.GetReference(rows), to = ref MemoryMarshal.GetReference(result);
        int last = n - Vector<double>.Count;
        for (int i = 0; last >= 0 && i < n; i += Vector<double>.Count)
        {
            int at = Math.Min(i, last);
            (h * Sum(weights, ref row, n, at)).StoreUnsafe(ref to, (nuint)at);
        }

        for (int i = last >= 0 ? n : 0; i < n; i++)
            result[i] = h * Single(weights, rows, n, i);
    }

    private static void Check(ReadOnlySpan<double> weights, ReadOnlySpan<double> rows, int n)
    {
        if (weights.IsEmpty || weights.Length * n > rows.Length)
            throw new ArgumentException($"There are {weights.Length} weights for {rows.Length} numbers in rows of {n}.", nameof(rows));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Sum(ReadOnlySpan<double> weights, ref double row, int n, int i)
    {
        Vector<double> sum = weights[0] * Vector.LoadUnsafe(ref row, (nuint)i);
        for (int j = 1; j < weights.Length; j++)
            sum = Vector.FusedMultiplyAdd(new Vector<double>(weights[j]), Vector.LoadUnsafe(ref row, (nuint)(j * n + i)), sum);
        return sum;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Single(ReadOnlySpan<double> weights, ReadOnlySpan<double> rows, int n, int i)
    {
        double sum = weights[0] * rows[i];
        for (int j = 1; j < weights.Length; j++)
            sum = Math.FusedMultiplyAdd(weights[j], rows[j * n + i], sum);
        return sum;
    }
}
