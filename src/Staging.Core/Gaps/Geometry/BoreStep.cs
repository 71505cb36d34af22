using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>A change of bore in a guide tube.</summary>
public sealed record BoreStep
{
    /// <summary>
    /// Distance from the booster motor's forward end [m], 0 to 5 m; from here on the tube has this bore.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Station { get; init => field = Guard.In(value, 0, 5); }

    /// <summary>Inner diameter from here on [m], 2 mm to 200 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Bore { get; init => field = Guard.In(value, 0.002, 0.2); }
}
