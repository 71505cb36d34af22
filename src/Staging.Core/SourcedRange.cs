namespace Staging.Core;

/// <summary>A starting value with the range that its sources allow.</summary>
public sealed class SourcedRange
{
    internal SourcedRange(
        string quantity, string unit, double min, double nominal, double max, Provenance nominalSource, Provenance rangeSource)
    {
        (Quantity, Unit) = (quantity, unit);
        (Min, Nominal, Max) = (min, nominal, max);
        (NominalSource, RangeSource) = (nominalSource, rangeSource);
    }

    /// <summary>What it is.</summary>
    public string Quantity { get; }

    /// <summary>Unit of the three numbers; <c>-</c> where there is none.</summary>
    public string Unit { get; }

    /// <summary>Least value that can be defended, in [Unit].</summary>
    public double Min { get; }

    /// <summary>The starting value, in [Unit].</summary>
    public double Nominal { get; }

    /// <summary>Greatest value that can be defended, in [Unit].</summary>
    public double Max { get; }

    /// <summary>Where the starting value comes from.</summary>
    public Provenance NominalSource { get; }

    /// <summary>Where the range comes from.</summary>
    public Provenance RangeSource { get; }

    /// <summary>Whether a value lies inside the range, ends included.</summary>
    /// <param name="value">A value in [Unit].</param>
    /// <returns>True inside.</returns>
    public bool Holds(double value) => value >= Min && value <= Max;

    /// <summary>Value and range on one line.</summary>
    /// <returns>For example <c>gas mass fraction 0.65 (0.4 to 0.7) -</c>.</returns>
    public override string ToString() =>
        Invariant.Text($"{Quantity} {Nominal:G6} ({Min:G6} to {Max:G6}) {Unit}");
}
