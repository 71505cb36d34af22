namespace Staging.Core.Solving;

/// <summary>
/// A whole run as one polynomial per step, with both sides of every jump.
/// Coefficients are kept in blocks that are never moved and stay small, so that a long record costs neither copies nor
/// large objects.
/// </summary>
internal sealed class DenseTrack(int dimension, int degree) : IStepObserver
{
    private const double FewRoundings = 4 * 2.2204460492503131e-16;

    /// <summary>Steps in a block of coefficients, two to this power.</summary>
    private const int BlockPower = 5;
    private const int Block = 1 << BlockPower;

    private readonly int row = dimension * (degree + 1);
    private readonly List<double[]> blocks = [];
    private double[] starts = new double[2 * Block];
    private double[] lengths = new double[2 * Block];
    private double[] steps = new double[2 * Block];

    /// <summary>Number of recorded steps.</summary>
    public int Count { get; private set; }

    /// <summary>First time recorded [s].</summary>
    /// <exception cref="InvalidOperationException">Nothing is recorded.</exception>
    public double Start => Count > 0 ? starts[0] : throw Empty();

    /// <summary>Last time recorded [s].</summary>
    /// <exception cref="InvalidOperationException">Nothing is recorded.</exception>
    public double End => Count > 0 ? starts[Count - 1] + lengths[Count - 1] : throw Empty();

    /// <summary>Start of step <paramref name="i"/> [s].</summary>
    public double StartOf(int i) => starts[i];

    /// <summary>Length of step <paramref name="i"/> [s].</summary>
    public double LengthOf(int i) => lengths[i];

    /// <summary>Records a step; its dense output may be of a lower degree than the record.</summary>
    public void Accept(double start, double length, in DenseStep step)
    {
        if (Count == starts.Length)
        {
            Array.Resize(ref starts, 2 * Count);
            Array.Resize(ref lengths, 2 * Count);
            Array.Resize(ref steps, 2 * Count);
        }

        if (Count == blocks.Count * Block)
            blocks.Add(GC.AllocateUninitializedArray<double>(Block * row));

        starts[Count] = start;
        lengths[Count] = length;
        steps[Count] = step.Step;
        Span<double> target = RowOf(Count);
        step.Initial.CopyTo(target);
        step.Coefficients.CopyTo(target[dimension..]);
        target[(dimension + step.Coefficients.Length)..].Clear();
        Count++;
    }

    /// <summary>Index of the step that holds a time; a time at a seam belongs to the later step.</summary>
    public int StepAt(double time)
    {
        int i = Array.BinarySearch(starts, 0, Count, time);
        if (i < 0)
            return Math.Max(~i - 1, 0);
        while (i + 1 < Count && starts[i + 1] == time)
            i++;
        return i;
    }

    /// <summary>Writes the state at a time [s], right-continuous: at a jump, the state after it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Nothing was recorded at that time.</exception>
    /// <exception cref="InvalidOperationException">Nothing is recorded at all.</exception>
    public void At(double time, Span<double> y) => Recorded(StepAt(time), time, y);

    /// <summary>
    /// Writes the state just before a time [s]: at a jump, the state before it; at the start, the first state.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Nothing was recorded up to that time.</exception>
    /// <exception cref="InvalidOperationException">Nothing is recorded at all.</exception>
    public void JustBefore(double time, Span<double> y)
    {
        int i = StepAt(time);
        while (i > 0 && starts[i] >= time)
            i--;
        Recorded(i, time, y);
    }

    private void Recorded(int i, double time, Span<double> y)
    {
        double start = Start;
        double roundOff = FewRoundings * Math.Max(Math.Abs(time), Math.Abs(starts[i]));
        if (!(time >= start - roundOff && time <= starts[i] + lengths[i] + roundOff))
        {
            throw new ArgumentOutOfRangeException(
                nameof(time), time,
                Invariant.Text($"Nothing is recorded at {time:G9} s; the record runs from {start:G9} s to {End:G9} s."));
        }

        InStep(i, time, y);
    }

    /// <summary>Writes the state of step <paramref name="i"/> at a time [s].</summary>
    public void InStep(int i, double time, Span<double> y)
    {
        ReadOnlySpan<double> c = RowOf(i);
        new DenseStep(starts[i], steps[i], c[..dimension], c[dimension..]).At(time, y);
    }

    private Span<double> RowOf(int i) => blocks[i >> BlockPower].AsSpan((i & (Block - 1)) * row, row);

    private static InvalidOperationException Empty() => new("Nothing is recorded.");
}
