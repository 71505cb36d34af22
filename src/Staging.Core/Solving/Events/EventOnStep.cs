namespace Staging.Core.Solving;

/// <summary>One event function along the dense output of a step, for the root finder.</summary>
internal ref struct EventOnStep<TSystem> : IScalarFunction
    where TSystem : IOdeSystem
{
    private readonly ref TSystem system;
    private readonly DenseStep step;
    private readonly int index;
    private readonly Span<double> y;
    private readonly Span<double> values;

    /// <summary>
    /// Watches event function <paramref name="index"/>; the spans are work memory for a state and for all event values.
    /// </summary>
    public EventOnStep(ref TSystem system, DenseStep step, int index, Span<double> y, Span<double> values)
    {
        this.system = ref system;
        this.step = step;
        this.index = index;
        this.y = y;
        this.values = values;
    }

    /// <summary>Evaluations so far.</summary>
    public int Calls { get; private set; }

    /// <summary>Time [s] at which the function was not a number; not-a-number where that never happened.</summary>
    public double UndefinedAt { get; private set; } = double.NaN;

    /// <summary>The value at time <paramref name="x"/> [s].</summary>
    public double At(double x)
    {
        step.At(x, y);
        system.EventValues(x, y, values);
        Calls++;
        if (double.IsNaN(values[index]))
            UndefinedAt = x;
        return values[index];
    }
}
