namespace Staging.Core.Solving;

/// <summary>Measures differences of states in units of the tolerance: 1 is just allowed.</summary>
internal sealed class ErrorScale
{
    private readonly double[] natural;
    private readonly int[] mates;
    private readonly double absolute;
    private readonly double relative;

    /// <summary>Takes the tolerances of the options and the natural size of each state.</summary>
    /// <param name="options">The tolerances.</param>
    /// <param name="scales">Natural size of each state, above zero.</param>
    /// <param name="mates">
    /// For each state another one that is a part of the same whole, such as a second gas in one vessel: what is allowed
    /// is relative to the larger of the two. A state is its own mate where it stands alone; empty where all do.
    /// </param>
    /// <exception cref="ArgumentException">
    /// No states, a scale that is not positive and finite, or mates that are not as many as the states.
    /// </exception>
    public ErrorScale(SolverOptions options, ReadOnlySpan<double> scales, ReadOnlySpan<int> mates = default)
    {
        if (scales.IsEmpty)
            throw new ArgumentException("There must be at least one state.", nameof(scales));
        for (int i = 0; i < scales.Length; i++)
        {
            if (!(scales[i] > 0 && double.IsFinite(scales[i])))
                throw new ArgumentException($"The natural scale of state {i} must be positive and finite.", nameof(scales));
        }

        if (!mates.IsEmpty && mates.Length != scales.Length)
            throw new ArgumentException($"There are {scales.Length} states and {mates.Length} mates.", nameof(mates));
        natural = scales.ToArray();
        this.mates = mates.IsEmpty ? [.. Enumerable.Range(0, natural.Length)] : mates.ToArray();
        absolute = options.ScaledAbsoluteTolerance;
        relative = options.RelativeTolerance;
    }

    /// <summary>
    /// Mean square of local errors over their tolerances; infinite where anything is not finite. Step control needs
    /// only the square, which saves a root.
    /// </summary>
    public double ErrorSquare(ReadOnlySpan<double> error, ReadOnlySpan<double> y, ReadOnlySpan<double> yNew)
    {
        double sum = 0;
        for (int i = 0; i < error.Length; i++)
        {
            double e = error[i] / double.MaxNative(Tolerance(i, y), Tolerance(i, yNew));
            sum += e * e;
        }

        double square = sum / error.Length;
        return double.IsFinite(square) && FirstNotFinite(yNew) < 0 ? square : double.PositiveInfinity;
    }

    /// <summary>Root mean square of values over the tolerances at a state.</summary>
    public double Norm(ReadOnlySpan<double> values, ReadOnlySpan<double> y)
    {
        double sum = 0;
        for (int i = 0; i < values.Length; i++)
        {
            double e = values[i] / Tolerance(i, y);
            sum += e * e;
        }

        return Math.Sqrt(sum / values.Length);
    }

    /// <summary>Root mean square of the difference of two vectors over the tolerances at a state.</summary>
    public double Distance(ReadOnlySpan<double> a, ReadOnlySpan<double> b, ReadOnlySpan<double> y)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++)
        {
            double e = (a[i] - b[i]) / Tolerance(i, y);
            sum += e * e;
        }

        return Math.Sqrt(sum / a.Length);
    }

    /// <summary>
    /// Root mean square of the sizes of the states over their tolerances; a state is never taken as smaller than its
    /// natural scale.
    /// </summary>
    public double Size(ReadOnlySpan<double> y)
    {
        double sum = 0;
        for (int i = 0; i < y.Length; i++)
        {
            double e = Math.Max(Math.Abs(y[i]), natural[i]) / Tolerance(i, y);
            sum += e * e;
        }

        return Math.Sqrt(sum / y.Length);
    }

    /// <summary>Index of the first value that is infinite or not a number; -1 where all are finite.</summary>
    public static int FirstNotFinite(ReadOnlySpan<double> values)
    {
        for (int i = 0; i < values.Length; i++)
        {
            if (!double.IsFinite(values[i]))
                return i;
        }

        return -1;
    }

    private double Tolerance(int i, ReadOnlySpan<double> y) =>
        absolute * natural[i] + relative * double.MaxNative(Math.Abs(y[i]), Math.Abs(y[mates[i]]));
}
