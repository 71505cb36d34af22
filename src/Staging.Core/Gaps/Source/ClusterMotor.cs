using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>One motor of a cluster, and how much later than the first it burns through.</summary>
public sealed record ClusterMotor
{
    /// <summary>The motor: a <see cref="GapSource.Afterburn"/> or a <see cref="GapSource.Fragments"/>.</summary>
    public required GapSource Source { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// How long after time zero it burns through [s], 0 to 10 s. Motors lit together burn through some per cent of
    /// their burn time apart. Until then it is closed to the gap.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Duration Delay { get; init => field = Guard.In(value, 0, 10); }
}
