namespace Staging.Core;

/// <summary>A starting value with the range that its sources allow.</summary>
public sealed record SourcedRange
{
    /// <summary>What it is.</summary>
    public required string Quantity { get; init => field = Guard.NotBlank(value); }

    /// <summary>Unit of the three numbers; <c>-</c> where there is none.</summary>
    public required string Unit { get; init => field = Guard.NotBlank(value); }

    /// <summary>Least value that can be defended, in [Unit].</summary>
    public required double Min { get; init => field = Guard.In(value, double.MinValue, double.MaxValue); }

    /// <summary>The starting value, in [Unit].</summary>
    public required double Nominal { get; init => field = Guard.In(value, double.MinValue, double.MaxValue); }

    /// <summary>Greatest value that can be defended, in [Unit].</summary>
    public required double Max { get; init => field = Guard.In(value, double.MinValue, double.MaxValue); }

    /// <summary>Where the starting value comes from.</summary>
    public required Provenance NominalSource { get; init => field = Guard.NotNull(value); }

    /// <summary>Where the range comes from.</summary>
    public required Provenance RangeSource { get; init => field = Guard.NotNull(value); }

    /// <summary>Whether a value lies inside the range, ends included.</summary>
    /// <param name="value">A value in [Unit].</param>
    /// <returns>True inside.</returns>
    public bool Holds(double value) => value >= Min && value <= Max;

    /// <summary>Value and range on one line.</summary>
    /// <returns>For example <c>gas mass fraction 0.65 (0.4 to 0.7) -</c>.</returns>
    public override string ToString() =>
        Invariant.Text($"{Quantity} {Nominal:G6} ({Min:G6} to {Max:G6}) {Unit}");
}
