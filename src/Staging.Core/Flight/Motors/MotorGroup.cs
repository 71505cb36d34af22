namespace Staging.Core.Flight;

/// <summary>Equal motors that burn side by side.</summary>
public sealed record MotorGroup
{
    /// <summary>The motor.</summary>
    public required Motor Motor { get; init => field = Guard.NotNull(value); }

    /// <summary>How many, 1 to 100.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required int Count { get; init => field = Guard.In(value, 1, 100); }
}
