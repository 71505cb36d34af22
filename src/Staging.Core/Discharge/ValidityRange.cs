namespace Staging.Core.Discharge;

/// <summary>The range over which the source of a discharge law vouches for it.</summary>
/// <param name="LeastPressureRatio">Least downstream over upstream pressure [-].</param>
/// <param name="LeastThicknessToDiameter">Least wall thickness over hole diameter [-].</param>
/// <param name="MostThicknessToDiameter">Greatest wall thickness over hole diameter [-].</param>
/// <param name="Basis">What the range rests on.</param>
public sealed record ValidityRange(double LeastPressureRatio, double LeastThicknessToDiameter, double MostThicknessToDiameter, Provenance Basis);
