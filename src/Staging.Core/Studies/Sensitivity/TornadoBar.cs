namespace Staging.Core.Studies;

/// <summary>The effect of one input alone.</summary>
public sealed class TornadoBar
{
    internal TornadoBar(ColumnName input, double low, double high, double atLow, double atCentre, double atHigh, double? slope,
        double? slopeError)
    {
        (Input, Low, High, AtLow, AtCentre, AtHigh) = (input, low, high, atLow, atCentre, atHigh);
        (Slope, SlopeError) = (slope, slopeError);
    }

    /// <summary>The input.</summary>
    public ColumnName Input { get; }

    /// <summary>Its value at the low end, in its unit [Unit].</summary>
    public double Low { get; }

    /// <summary>Its value at the high end [Unit].</summary>
    public double High { get; }

    /// <summary>The result at the low end, in the unit of the result [Unit].</summary>
    public double AtLow { get; }

    /// <summary>The result with every input at its median [Unit].</summary>
    public double AtCentre { get; }

    /// <summary>The result at the high end [Unit].</summary>
    public double AtHigh { get; }

    /// <summary>
    /// Change of the result over that of the input, between the 45 % and the 55 % quantile [Unit of the result over
    /// that of the input]; null where both are one listed value.
    /// </summary>
    public double? Slope { get; }

    /// <summary>
    /// Error of that slope by the width of its step [Unit of the result over that of the input]: how far the chord
    /// between the two ends lies from it, extrapolated to zero width (L. F. Richardson 1911); null where there is no
    /// slope or no wider chord.
    /// </summary>
    public double? SlopeError { get; }

    /// <summary>Distance between the lowest and the highest of the three results [Unit].</summary>
    public double Length => Math.Max(AtCentre, Math.Max(AtLow, AtHigh)) - Math.Min(AtCentre, Math.Min(AtLow, AtHigh));

    /// <summary>The ends of the input and the results there, on one line.</summary>
    /// <returns>For example <c>joint.breakaway [N]: 12.4 to 50.1 gives 80.5 to 212</c>.</returns>
    public override string ToString() => Invariant.Text($"{Input}: {Low:G4} to {High:G4} gives {AtLow:G4} to {AtHigh:G4}");
}
