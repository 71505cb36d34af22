namespace Staging.Core.Solving;

/// <summary>Factors of a small full matrix, in place: P A = L U by rows with partial pivoting.</summary>
/// <remarks>G. H. Golub and C. F. Van Loan, Matrix Computations, 4th ed. (2013), algorithm 3.4.1.</remarks>
internal static class LuFactors
{
    /// <summary>Replaces a matrix, given row by row, by its factors.</summary>
    /// <param name="a">The matrix; on return U on and above the diagonal, the multipliers of L below it.</param>
    /// <param name="pivots">On return the row that was exchanged with each row; its length is the order of the matrix.</param>
    /// <returns>False where the matrix is singular to working precision, or holds anything that is not finite.</returns>
    public static bool Factorise(Span<double> a, Span<int> pivots)
    {
        int n = pivots.Length;
        for (int k = 0; k < n; k++)
        {
            int p = k;
            for (int i = k + 1; i < n; i++)
            {
                if (Math.Abs(a[i * n + k]) > Math.Abs(a[p * n + k]))
                    p = i;
            }

            double pivot = a[p * n + k];
            if (pivot == 0 || !double.IsFinite(pivot))
                return false;
            pivots[k] = p;
            Span<double> row = a.Slice(k * n, n);
            if (p != k)
                Exchange(row, a.Slice(p * n, n));
            for (int i = k + 1; i < n; i++)
            {
                Span<double> lower = a.Slice(i * n, n);
                double multiplier = lower[k] /= pivot;
                if (multiplier == 0)
                    continue;
                for (int j = k + 1; j < n; j++)
                    lower[j] -= multiplier * row[j];
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
        for (int k = 0; k < n; k++)
            (b[k], b[pivots[k]]) = (b[pivots[k]], b[k]);
        for (int i = 1; i < n; i++)
        {
            double sum = b[i];
            for (int j = 0; j < i; j++)
                sum -= a[i * n + j] * b[j];
            b[i] = sum;
        }

        for (int i = n - 1; i >= 0; i--)
        {
            double sum = b[i];
            for (int j = i + 1; j < n; j++)
                sum -= a[i * n + j] * b[j];
            b[i] = sum / a[i * n + i];
        }
    }

    private static void Exchange(Span<double> a, Span<double> b)
    {
        for (int j = 0; j < a.Length; j++)
            (a[j], b[j]) = (b[j], a[j]);
    }
}
