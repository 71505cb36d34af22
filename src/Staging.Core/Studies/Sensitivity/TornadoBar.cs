namespace Staging.Core.Studies;

/// <summary>What one input does alone.</summary>
/// <param name="Input">The input.</param>
/// <param name="Low">Its value at the low end, in its unit [Unit].</param>
/// <param name="High">Its value at the high end [Unit].</param>
/// <param name="AtLow">The result there, in the unit of the result [Unit].</param>
/// <param name="AtCentre">The result with every input at its median [Unit].</param>
/// <param name="AtHigh">The result at the high end [Unit].</param>
/// <param name="Slope">Change of the result over that of the input, between the 45 % and the 55 % quantile [Unit of the
/// result over that of the input]; null where both are one listed value.</param>
/// <param name="SlopeError">Error of that slope by the width of its step, in its unit [Unit of the result over that of
/// the input]: how far the chord between the two ends lies from it, extrapolated to zero width (L. F. Richardson 1911);
/// null where there is no slope or no wider chord.</param>
public sealed record TornadoBar(ColumnName Input, double Low, double High, double AtLow, double AtCentre, double AtHigh, double? Slope,
    double? SlopeError)
{
    /// <summary>Distance between the least and the greatest of the three results [Unit].</summary>
    public double Length => Math.Max(AtCentre, Math.Max(AtLow, AtHigh)) - Math.Min(AtCentre, Math.Min(AtLow, AtHigh));
}
