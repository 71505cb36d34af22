namespace Staging.Core.Gases;

/// <summary>One gas of a mixture and its share of the mass.</summary>
public sealed record GasComponent
{
    /// <summary>The gas.</summary>
    public required PerfectGas Gas { get; init => field = Guard.NotNull(value); }

    /// <summary>Its share of the mass of the mixture [-], 0 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double MassFraction { get; init => field = Guard.In(value, 0, 1); }
}
