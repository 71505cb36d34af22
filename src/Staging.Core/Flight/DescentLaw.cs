namespace Staging.Core.Flight;

/// <summary>What decides a descent with fixed drag area.</summary>
/// <param name="Air">The air.</param>
/// <param name="SeaLevelGravity">Gravity at sea level [m/s2].</param>
/// <param name="EarthRadius">Distance of sea level from the centre [m]; infinite for uniform gravity.</param>
/// <param name="DragAreaPerMass">CdA/m [m2/kg].</param>
internal readonly record struct DescentLaw(AirColumn Air, double SeaLevelGravity, double EarthRadius, double DragAreaPerMass);
