using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Staging.Core.Solving;

/// <summary>Factors of a small full matrix, in place: P A = L U by rows with partial pivoting.</summary>
/// <remarks>
/// G. H. Golub and C. F. Van Loan, Matrix Computations, 4th ed. (2013), algorithm 3.4.1. Lengths are checked once
/// per call, indices are not.
/// </remarks>
internal static class LuFactors
{
    /// <summary>Replaces a matrix, given row by row, by its factors.</summary>
    /// <param name="a">The matrix; on return U above the diagonal, the reciprocals of its pivots on it, the multipliers
    /// of L below it.</param>
    /// <param name="pivots">On return the row that was exchanged with each row; its length is the order of the
    /// matrix.</param>
    /// <returns>
    /// False where the matrix is singular to working precision, or holds anything that is not finite.
    /// </returns>
    public static bool Factorise(Span<double> a, Span<int> pivots)
    {
        int n = pivots.Length;
        Check(a.Length, n, n);
        ref double first = ref MemoryMarshal.GetReference(a);
        for (int k = 0; k < n; k++)
        {
            ref double row = ref Unsafe.Add(ref first, k * n);
            int p = k;
            double most = Math.Abs(Unsafe.Add(ref row, k));
            for (int i = k + 1; i < n; i++)
            {
                double size = Math.Abs(Unsafe.Add(ref first, i * n + k));
                if (size > most)
                    (p, most) = (i, size);
            }

            double pivot = Unsafe.Add(ref first, p * n + k), reciprocal = 1 / pivot;
            if (!double.IsFinite(reciprocal) || !double.IsFinite(pivot))
                return false;
            pivots[k] = p;
            if (p != k)
                Exchange(a.Slice(k * n, n), a.Slice(p * n, n));
            Unsafe.Add(ref row, k) = reciprocal;
            for (int i = k + 1; i < n; i++)
            {
                ref double lower = ref Unsafe.Add(ref first, i * n);
                double multiplier = Unsafe.Add(ref lower, k) *= reciprocal;
                if (multiplier == 0)
                    continue;
                for (int j = k + 1; j < n; j++)
                    Unsafe.Add(ref lower, j) -= multiplier * Unsafe.Add(ref row, j);
            }
        }

        return true;
    }

    /// <summary>Replaces a right-hand side by the solution.</summary>
    /// <param name="a">The factors that <see cref="Factorise"/> left.</param>
    /// <param name="pivots">The exchanges that it left.</param>
    /// <param name="b">Right-hand side; on return the solution.</param>
    public static void Solve(ReadOnlySpan<double> a, ReadOnlySpan<int> pivots, Span<double> b)
    {
        int n = pivots.Length;
        Check(a.Length, n, b.Length);
        for (int k = 0; k < n; k++)
        {
            int p = pivots[k];
            if (p != k)
                (b[k], b[p]) = (b[p], b[k]);
        }

        ref double first = ref MemoryMarshal.GetReference(a), x = ref MemoryMarshal.GetReference(b);
        for (int i = 1; i < n; i++)
        {
            ref double row = ref Unsafe.Add(ref first, i * n);
            double sum = Unsafe.Add(ref x, i);
            for (int j = 0; j < i; j++)
                sum -= Unsafe.Add(ref row, j) * Unsafe.Add(ref x, j);
            Unsafe.Add(ref x, i) = sum;
        }

        for (int i = n - 1; i >= 0; i--)
        {
            ref double row = ref Unsafe.Add(ref first, i * n);
            double sum = Unsafe.Add(ref x, i);
            for (int j = n - 1; j > i; j--)
                sum -= Unsafe.Add(ref row, j) * Unsafe.Add(ref x, j);
            Unsafe.Add(ref x, i) = sum * Unsafe.Add(ref row, i);
        }
    }

    private static void Check(int numbers, int n, int right)
    {
        if (numbers != n * n || right != n)
            throw new ArgumentException($"A matrix of order {n} does not match {numbers} numbers and a right-hand side of {right}.",
                nameof(numbers));
    }

    private static void Exchange(Span<double> a, Span<double> b)
    {
        for (int j = 0; j < a.Length; j++)
            (a[j], b[j]) = (b[j], a[j]);
    }
}
