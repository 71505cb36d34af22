namespace Staging.Core.Solving;

/// <summary>
/// An embedded one-step method with a dense output of degree <see cref="DenseDegree"/> in the step fraction.
/// </summary>
/// <remarks>
/// A struct that holds its own work memory, so that an <see cref="Integrator{TMethod}"/> owns one and calls it without
/// dispatch. The order of calls: <see cref="Allocate"/> once; <see cref="Begin"/> at the start of a phase; then
/// <see cref="Step"/>, again with a smaller step where it was rejected; <see cref="Dense"/> if the inside of the step
/// is wanted; <see cref="Advance"/> once it was accepted whole. Every method adds its work to the counts it is given.
/// No method evaluates outside [t, t + h].
/// </remarks>
internal interface IOneStepMethod
{
    /// <summary>Order p of the solution that is carried on; its error estimate is of size h^p.</summary>
    static abstract int Order { get; }

    /// <summary>Degree of the dense output in the step fraction.</summary>
    static abstract int DenseDegree { get; }

    /// <summary>Weight of the error before in the control of the step [-]; see <see cref="StepControl"/>.</summary>
    static abstract double ErrorMemory { get; }

    /// <summary>
    /// Rate times step at the edge of stability on the negative real axis [-]; infinite where there is none.
    /// </summary>
    static abstract double EdgeOfStability { get; }

    /// <summary>The slope f(t, y) where the next step starts, after <see cref="Begin"/>.</summary>
    ReadOnlySpan<double> StartSlope { get; }

    /// <summary>Makes the work memory for as many states as there are natural scales.</summary>
    void Allocate(ReadOnlySpan<double> scales);

    /// <summary>Starts a phase: nothing evaluated earlier is reused.</summary>
    void Begin<TSystem>(ref TSystem system, double t, ReadOnlySpan<double> y, ref SolverWork work)
        where TSystem : IOdeSystem;

    /// <summary>Takes one step of size <paramref name="h"/> and estimates its local error.</summary>
    void Step<TSystem>(
        ref TSystem system, double t, double h, ReadOnlySpan<double> y, Span<double> yNew, Span<double> error, ref SolverWork work)
        where TSystem : IOdeSystem;

    /// <summary>
    /// Writes the dense output y(t + s h) = y + c1 s + c2 s^2 + ... of the step just taken; row j of
    /// <paramref name="c"/> holds c(j+1).
    /// </summary>
    void Dense(double h, ReadOnlySpan<double> y, ReadOnlySpan<double> yNew, Span<double> c);

    /// <summary>
    /// Estimates the fastest rate at the end of the step just taken [1/s]; zero where there is no edge of stability.
    /// </summary>
    double RateAtEnd(double h, ErrorScale scale, ReadOnlySpan<double> yNew, Span<double> work);

    /// <summary>The step just taken was accepted whole: the next one starts at its end.</summary>
    void Advance();
}
