namespace Staging.Core.Studies;

/// <summary>Ends a study once the probability of an outcome is known closely enough.</summary>
/// <remarks>
/// The rule is checked after every 64th case, in order, so that where a study stops does not depend on threads.
/// Stopping on the results makes the interval contain the true value slightly less often than its confidence states;
/// the exact interval has some margin for this. Note that an outcome that never occurs has a narrow interval
/// immediately (0 of 128 is 0 to 0.028), so a rule that watches a rare outcome, or a misspelt name, stops at the first
/// check. Watch an outcome that occurs, and check <see cref="ReliabilityRun.Outcomes"/>.
/// </remarks>
public sealed record StopRule
{
    /// <summary>The outcome that it watches.</summary>
    public required string Outcome { get; init => field = Guard.NotBlank(value); }

    /// <summary>Half of the width of the exact interval at which it is satisfied [-], 1e-5 to 0.5.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double HalfWidth { get; init => field = Guard.In(value, 1e-5, 0.5); }

    /// <summary>Confidence of that interval [-], 0.5 to 0.999999. The default is 0.95.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double Confidence { get; init => field = Guard.In(value, 0.5, 0.999999); } = 0.95;

    /// <summary>Cases to run before the rule is first checked, 64 to 1 million. The default is 128.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int MinCases { get; init => field = Guard.In(value, 64, 1_000_000); } = 128;
}
