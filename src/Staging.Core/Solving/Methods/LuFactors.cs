using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Staging.Core.Solving;

/// <summary>Factors of a small full matrix, in place: P A = L U, on the diagonal where that can be, in lanes.</summary>
/// <remarks>
/// G. H. Golub and C. F. Van Loan, Matrix Computations, 4th ed. (2013), algorithm 3.4.1. In a balance of volumes what
/// leaves one enters the others, so that the diagonal holds what all of its column give: eliminated in that order mass
/// and energy are kept to rounding, and so is the small difference of pressures that drives a flow. With the largest
/// numbers as pivots either is lost, since masses in kilograms and energies in joules stand in one matrix. Another row
/// is taken where the diagonal is next to nothing. Rows are subtracted from rows, and for the solution columns from
/// columns, so that every element is rounded in the same order whatever the width of the lanes. Lengths are checked
/// once per call, indices are not.
/// </remarks>
internal static class LuFactors
{
    /// <summary>
    /// How small an element of the diagonal may be beside the largest below it, each over the size of its row, and be
    /// the pivot [-]: no elimination makes rounding grow by more than one over that.
    /// </summary>
    private const double LeastPivot = 1e-6;

    /// <summary>Replaces a matrix, given row by row, by its factors.</summary>
    /// <param name="a">The matrix; on return, column by column, U above the diagonal, the reciprocals of its pivots on
    /// it, the multipliers of L below it.</param>
    /// <param name="weights">One over the size of what each row is the balance of, all alike where rows share a unit;
    /// on return exchanged as the rows are.</param>
    /// <param name="pivots">On return the row that was exchanged with each row; its length is the order of the
    /// matrix.</param>
    /// <returns>
    /// False where the matrix is singular to working precision, or holds anything that is not finite.
    /// </returns>
    public static bool Factorise(Span<double> a, Span<double> weights, Span<int> pivots)
    {
        int n = pivots.Length;
        Check(a.Length, n, weights.Length);
        ref double first = ref MemoryMarshal.GetReference(a);
        for (int k = 0; k < n; k++)
        {
            ref double row = ref Unsafe.Add(ref first, k * n);
            int p = k;
            double most = Math.Abs(Unsafe.Add(ref row, k)) * weights[k] / LeastPivot;
            for (int i = k + 1; i < n; i++)
            {
                double size = Math.Abs(Unsafe.Add(ref first, i * n + k)) * weights[i];
                if (size > most)
                    (p, most) = (i, size);
            }

            double pivot = Unsafe.Add(ref first, p * n + k), reciprocal = 1 / pivot;
            if (!double.IsFinite(reciprocal) || !double.IsFinite(pivot))
                return false;
            pivots[k] = p;
            if (p != k)
            {
                Exchange(a.Slice(k * n, n), a.Slice(p * n, n));
                (weights[k], weights[p]) = (weights[p], weights[k]);
            }

            Unsafe.Add(ref row, k) = reciprocal;
            for (int i = k + 1; i < n; i++)
            {
                ref double lower = ref Unsafe.Add(ref first, i * n);
                double multiplier = Unsafe.Add(ref lower, k) *= reciprocal;
                if (multiplier != 0)
                    Subtract(ref Unsafe.Add(ref lower, k + 1), multiplier, ref Unsafe.Add(ref row, k + 1), n - k - 1);
            }
        }

        Transpose(ref first, n);
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
        for (int j = 0; j < n; j++)
        {
            ref double column = ref Unsafe.Add(ref first, j * n);
            double value = Unsafe.Add(ref x, j);
            for (int i = j + 1; i < n; i++)
                Unsafe.Add(ref x, i) -= value * Unsafe.Add(ref column, i);
        }

        for (int j = n - 1; j >= 0; j--)
        {
            ref double column = ref Unsafe.Add(ref first, j * n);
            double value = Unsafe.Add(ref x, j) *= Unsafe.Add(ref column, j);
            for (int i = 0; i < j; i++)
                Unsafe.Add(ref x, i) -= value * Unsafe.Add(ref column, i);
        }
    }

    /// <summary>Takes a multiple of some numbers from as many others.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Subtract(ref double from, double multiplier, ref double numbers, int count)
    {
        var factor = new Vector<double>(multiplier);
        int i = 0;
        for (; i <= count - Vector<double>.Count; i += Vector<double>.Count)
            (Vector.LoadUnsafe(ref from, (nuint)i) - factor * Vector.LoadUnsafe(ref numbers, (nuint)i)).StoreUnsafe(ref from, (nuint)i);
        for (; i < count; i++)
            Unsafe.Add(ref from, i) -= multiplier * Unsafe.Add(ref numbers, i);
    }

    private static void Transpose(ref double first, int n)
    {
        for (int i = 1; i < n; i++)
        {
            for (int j = 0; j < i; j++)
            {
                ref double one = ref Unsafe.Add(ref first, i * n + j), other = ref Unsafe.Add(ref first, j * n + i);
                (one, other) = (other, one);
            }
        }
    }

    private static void Check(int numbers, int n, int right)
    {
        if (numbers != n * n || right != n)
            throw new ArgumentException($"A matrix of order {n} does not match {numbers} numbers and a row of {right}.",
                nameof(numbers));
    }

    private static void Exchange(Span<double> a, Span<double> b)
    {
        for (int j = 0; j < a.Length; j++)
            (a[j], b[j]) = (b[j], a[j]);
    }
}
