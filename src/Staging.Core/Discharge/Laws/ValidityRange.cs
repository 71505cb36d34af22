namespace Staging.Core.Discharge;

/// <summary>The range over which the source of a discharge law supports it.</summary>
/// <param name="MinPressureRatio">Least downstream over upstream pressure [-].</param>
/// <param name="MinThicknessToDiameter">Least wall thickness over hole diameter [-].</param>
/// <param name="MaxThicknessToDiameter">Greatest wall thickness over hole diameter [-].</param>
/// <param name="Basis">What the range rests on.</param>
public sealed record ValidityRange(double MinPressureRatio, double MinThicknessToDiameter, double MaxThicknessToDiameter, Provenance Basis);
