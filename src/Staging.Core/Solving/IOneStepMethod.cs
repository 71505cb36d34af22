namespace Staging.Core.Solving;

/// <summary>An embedded one-step method with a dense output of degree <see cref="DenseDegree"/> in the step fraction.</summary>
/// <remarks>
/// Slopes are rows of <c>k</c>, one row of <c>Dimension</c> numbers a stage; row 0 holds f(t, y) on entry. The last row holds
/// f(t + h, yNew) on return, so it is row 0 of the next step.
/// </remarks>
internal interface IOneStepMethod
{
    /// <summary>Order of the solution that is carried on.</summary>
    static abstract int Order { get; }

    /// <summary>Number of slope rows.</summary>
    static abstract int Stages { get; }

    /// <summary>Degree of the dense output in the step fraction.</summary>
    static abstract int DenseDegree { get; }

    /// <summary>Takes one step and estimates its local error.</summary>
    static abstract void Step<TSystem>(
        ref TSystem system, double t, double h, ReadOnlySpan<double> y, Span<double> k, Span<double> yNew, Span<double> error)
        where TSystem : IOdeSystem;

    /// <summary>Writes the dense output y(t + s h) = y + c1 s + c2 s^2 + ...; row j of <paramref name="c"/> holds c(j+1).</summary>
    static abstract void Dense(double h, ReadOnlySpan<double> k, int dimension, Span<double> c);
}
