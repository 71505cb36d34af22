namespace Staging.Core.Flight;

/// <summary>What decides a descent with fixed drag area.</summary>
/// <param name="Site">Air and gravity.</param>
/// <param name="DragAreaPerMass">CdA/m [m2/kg].</param>
internal readonly record struct DescentLaw(SiteColumn Site, double DragAreaPerMass);
