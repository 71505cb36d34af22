namespace Staging.Core.Studies;

/// <summary>Ends a study once the probability of an outcome is known closely enough.</summary>
/// <remarks>
/// The rule is checked after every 64th case, in order, so that where a study stops does not depend on threads.
/// Stopping on what was seen makes the interval hold the true value a little less often than its confidence says; the
/// exact interval has some to spare. A trap: an outcome that never comes has a narrow interval at once (0 of 128 is 0
/// to 0.028), so a rule that watches a rare outcome, or a name misspelt, stops at the first look. Watch an outcome that
/// comes, and look at <see cref="ReliabilityRun.Outcomes"/>.
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
