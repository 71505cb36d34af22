using Staging.Core.Solving;

namespace Staging.Core.Tests.TestProblems;

/// <summary>
/// Two phases joined by a located event: y' = y cos t from y(0) = 1 until y falls to exp(1/2), which is at t = 5 pi/6; there y doubles and
/// the right-hand side becomes y' = -t y, so that y = y* exp((t*^2 - t^2)/2). Both pieces are non-autonomous; invented for this test.
/// </summary>
internal struct JumpAndSwitch : IOdeSystem
{
    public static double EventTime => 5 * Math.PI / 6;

    public static double Stop => 4;

    /// <summary>Whether the event has happened.</summary>
    public bool Switched { get; set; }

    public readonly int Dimension => 1;

    public readonly int EventCount => 1;

    public static double Exact(double t)
    {
        if (t < EventTime)
            return Math.Exp(Math.Sin(t));
        return 2 * Math.Exp(0.5 + (EventTime * EventTime - t * t) / 2);
    }

    public readonly EventRule Rule(int index) => new(Crossing.Falling, EndsPhase: true);

    public readonly void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt) =>
        dydt[0] = Switched ? -t * y[0] : y[0] * Math.Cos(t);

    public readonly void EventValues(double t, ReadOnlySpan<double> y, Span<double> values) =>
        values[0] = Switched ? 1 : y[0] - Math.Exp(0.5);
}
