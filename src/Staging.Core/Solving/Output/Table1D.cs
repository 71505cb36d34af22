namespace Staging.Core.Solving;

/// <summary>A piecewise linear table y(x) with a stated rule for both ends.</summary>
internal sealed class Table1D
{
    private readonly double[] x;
    private readonly double[] y;
    private readonly Extrapolation ends;

    /// <summary>Makes a table from strictly rising abscissae and as many values.</summary>
    /// <exception cref="ArgumentException">Fewer than two points, unequal lengths, abscissae that do not rise, or a
    /// value that is not finite.</exception>
    public Table1D(ReadOnlySpan<double> x, ReadOnlySpan<double> y, Extrapolation ends)
    {
        if (x.Length < 2 || x.Length != y.Length)
            throw new ArgumentException(
                $"A table needs at least two points and as many values as abscissae; it has {x.Length} and {y.Length}.", nameof(x));
        for (int i = 0; i < x.Length; i++)
        {
            if (!double.IsFinite(x[i]) || !double.IsFinite(y[i]))
                throw new ArgumentException($"Point {i} of the table is not finite.", double.IsFinite(x[i]) ? nameof(y) : nameof(x));
            if (i > 0 && !(x[i] > x[i - 1]))
                throw new ArgumentException(Invariant.Text($"Abscissa {i} of the table does not rise: {x[i - 1]:G6}, {x[i]:G6}."),
                    nameof(x));
        }

        this.x = x.ToArray();
        this.y = y.ToArray();
        this.ends = ends;
    }

    /// <summary>The values.</summary>
    public ReadOnlySpan<double> Values => y;

    /// <summary>The value at <paramref name="at"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the table, where the end rule is
    /// <see cref="Extrapolation.Refuse"/>.</exception>
    public double At(double at)
    {
        if (!(at >= x[0] && at <= x[^1]))
            return Outside(at);
        if (at == x[^1])
            return y[^1];
        int i = Segment(at);
        return y[i] + (y[i + 1] - y[i]) * ((at - x[i]) / (x[i + 1] - x[i]));
    }

    /// <summary>
    /// Index of the piece [x(i), x(i+1)] that holds a point inside the table; a knot belongs to the piece on its right,
    /// the last to its left.
    /// </summary>
    public int Segment(double at)
    {
        int i = Array.BinarySearch(x, at);
        return Math.Clamp(i >= 0 ? i : ~i - 1, 0, x.Length - 2);
    }

    private double Outside(double at) => ends switch
    {
        Extrapolation.Zero => double.IsNaN(at) ? throw Refusal(at) : 0,
        Extrapolation.Hold => at < x[0] ? y[0] : at > x[^1] ? y[^1] : throw Refusal(at),
        _ => throw Refusal(at),
    };

    private ArgumentOutOfRangeException Refusal(double at) => new(
        nameof(at), at, Invariant.Text($"The table runs from {x[0]:G6} to {x[^1]:G6}; {at:G6} lies outside."));
}
