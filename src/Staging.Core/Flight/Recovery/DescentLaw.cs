namespace Staging.Core.Flight;

/// <summary>The parameters of a descent with fixed drag area.</summary>
/// <param name="Site">Air and gravity.</param>
/// <param name="DragAreaPerMass">CdA/m [m2/kg].</param>
internal readonly record struct DescentLaw(SiteColumn Site, double DragAreaPerMass);
