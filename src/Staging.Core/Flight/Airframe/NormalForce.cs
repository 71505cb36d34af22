using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>What a part contributes to the normal force at small angles of attack.</summary>
/// <param name="Part">The part.</param>
/// <param name="Slope">Normal force coefficient per radian on the largest cross-section, C_N,alpha [1/rad].</param>
/// <param name="CentreOfPressure">Station from the nose tip where it acts [m].</param>
public sealed record NormalForce(string Part, double Slope, Length CentreOfPressure);
