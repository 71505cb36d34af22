using UnitsNet;

namespace Staging.Core.GroundTests;

/// <summary>When something was seen, and how exactly.</summary>
public sealed record TimeSeen
{
    /// <summary>Time since burn-through [s], above 0 and at most 10 s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Duration At
    {
        get;
        init
        {
            Guard.Above(value.Seconds, 0, 10, "s", nameof(At));
            field = value;
        }
    }

    /// <summary>
    /// Standard error of that time [s], 1 us to 1 s: of a film some half of the time between two frames, with what is
    /// not known of the moment of burn-through.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Duration Within { get; init => field = Guard.In(value, 1e-6, 1); }
}
