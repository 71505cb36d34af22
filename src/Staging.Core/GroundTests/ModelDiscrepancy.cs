using UnitsNet;

namespace Staging.Core.GroundTests;

/// <summary>How far the model may be off even with the right inputs: what its likelihoods allow for.</summary>
/// <remarks>
/// These are judgements, and everything that is learned hangs on them: too small, and the ranges after the tests are
/// too narrow. They also stand for what differs from one motor to the next, since all tests share one set of inputs.
/// </remarks>
public sealed record ModelDiscrepancy
{
    /// <summary>
    /// The judged values: an outcome wrong in one test of ten, since the model disagrees with two of nine things that
    /// practice says; times within 30 % and pressures within 30 % of the peak, about what the three models of the gas
    /// differ by; an error of pressure that lasts for 5 ms, some times the filling of a gap.
    /// </summary>
    public static ModelDiscrepancy Judged { get; } = new();

    /// <summary>
    /// Chance that the model is wrong about how a test ends [-], 0 to 0.6; then both other endings are equally likely,
    /// and its times and pressures say nothing either. The default is 0.1.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double WrongOutcome { get; init => field = Guard.In(value, 0, 0.6); } = 0.1;

    /// <summary>Standard error of a time of the model, over that time [-], 0.001 to 0.5. The default is 0.3.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double TimeSpread { get; init => field = Guard.In(value, 1e-3, 0.5); } = 0.3;

    /// <summary>
    /// Standard error of a pressure of the model, over the peak of the trace [-], 0.001 to 2. The default is 0.3.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double PressureSpread { get; init => field = Guard.In(value, 1e-3, 2); } = 0.3;

    /// <summary>
    /// How long an error of pressure lasts [s], 1 us to 1 s: a trace counts as one sample for each such time. The
    /// default is 5 ms.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Duration PressureMemory { get; init => field = Guard.In(value, 1e-6, 1); } = Duration.FromMilliseconds(5);
}
