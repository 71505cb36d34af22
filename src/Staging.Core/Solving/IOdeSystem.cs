namespace Staging.Core.Solving;

/// <summary>A smooth right-hand side dy/dt = f(t, y) with the event functions watched while it holds.</summary>
/// <remarks>
/// One phase is one system: it is smooth from its start to its stop time. Jumps are made between phases, by the
/// caller. Implemented by structs, so that the integrator calls it without dispatch.
/// </remarks>
internal interface IOdeSystem
{
    /// <summary>
    /// Whether <see cref="Jacobian"/> is implemented; where it is not, implicit methods take finite differences.
    /// </summary>
    static virtual bool HasJacobian => false;

    /// <summary>
    /// Whether <see cref="Holds"/> is implemented; where it is not, every finite state will do.
    /// </summary>
    static virtual bool HasDomain => false;

    /// <summary>Number of states.</summary>
    int Dimension { get; }

    /// <summary>
    /// Number of leading states on which nothing depends, or which rest: integrals along the way, which an implicit
    /// step takes without solving for them. Used where <see cref="HasJacobian"/> says so.
    /// </summary>
    int Integrals => 0;

    /// <summary>Number of event functions; zero where nothing is watched.</summary>
    int EventCount { get; }

    /// <summary>The rule of event function <paramref name="index"/>.</summary>
    EventRule Rule(int index);

    /// <summary>Writes dy/dt for the state <paramref name="y"/> at time <paramref name="t"/> [s].</summary>
    void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt);

    /// <summary>Writes the event functions; an event is a change of sign.</summary>
    void EventValues(double t, ReadOnlySpan<double> y, Span<double> values);

    /// <summary>
    /// Whether a state is one that can be. A step that leaves the domain is repeated with a shorter one, whatever its
    /// error: an implicit method damps what is stiff, and its estimate may not see that it went too far.
    /// </summary>
    bool Holds(ReadOnlySpan<double> y) => true;

    /// <summary>Writes the derivatives of the right-hand side, where <see cref="HasJacobian"/> says so.</summary>
    /// <param name="t">Time [s].</param>
    /// <param name="y">The state.</param>
    /// <param name="slope">The right-hand side there, as <see cref="Derivative"/> writes it.</param>
    /// <param name="jacobian">df/dy, row by row: element (i, j) at i Dimension + j.</param>
    /// <param name="timeSlope">df/dt at fixed state; zero where time does not occur.</param>
    void Jacobian(double t, ReadOnlySpan<double> y, ReadOnlySpan<double> slope, Span<double> jacobian, Span<double> timeSlope) =>
        throw new NotSupportedException("The system has no Jacobian.");
}
