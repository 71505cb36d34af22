using System.Numerics;
using System.Runtime.InteropServices;

namespace Staging.Core.Solving;

/// <summary>The dense output of one step: a polynomial in the step fraction for each state.</summary>
internal readonly ref struct DenseStep
{
    public DenseStep(double start, double step, ReadOnlySpan<double> y, ReadOnlySpan<double> coefficients)
    {
        Start = start;
        Step = step;
        Initial = y;
        Coefficients = coefficients;
    }

    /// <summary>Start time [s].</summary>
    public double Start { get; }

    /// <summary>Step size [s].</summary>
    public double Step { get; }

    /// <summary>State at the start.</summary>
    public ReadOnlySpan<double> Initial { get; }

    /// <summary>Rows of coefficients, lowest power first; one row of Dimension numbers a power.</summary>
    public ReadOnlySpan<double> Coefficients { get; }

    /// <summary>Writes the state at <paramref name="time"/> [s].</summary>
    public void At(double time, Span<double> y)
    {
        int n = Initial.Length, last = Coefficients.Length - n, i = 0;
        ArgumentOutOfRangeException.ThrowIfNotEqual(y.Length, n);
        double s = (time - Start) / Step;
        ref double c = ref MemoryMarshal.GetReference(Coefficients), initial = ref MemoryMarshal.GetReference(Initial),
            to = ref MemoryMarshal.GetReference(y);
        for (; i <= n - Vector<double>.Count; i += Vector<double>.Count)
        {
            Vector<double> sum = Vector<double>.Zero;
            for (int row = last; row >= 0; row -= n)
                sum = (sum + Vector.LoadUnsafe(ref c, (nuint)(row + i))) * s;
            (Vector.LoadUnsafe(ref initial, (nuint)i) + sum).StoreUnsafe(ref to, (nuint)i);
        }

        for (; i < n; i++)
        {
            double sum = 0;
            for (int row = last; row >= 0; row -= n)
                sum = (sum + Coefficients[row + i]) * s;
            y[i] = Initial[i] + sum;
        }
    }

    /// <summary>Writes the slope dy/dt of the dense output at <paramref name="time"/> [s].</summary>
    public void SlopeAt(double time, Span<double> dydt)
    {
        int n = Initial.Length;
        double s = (time - Start) / Step;
        for (int i = 0; i < n; i++)
        {
            double sum = 0;
            int power = Coefficients.Length / n;
            for (int row = Coefficients.Length - n; row >= 0; row -= n, power--)
                sum = sum * s + power * Coefficients[row + i];
            dydt[i] = sum / Step;
        }
    }
}
