using Staging.Core.Gases;

namespace Staging.Core.Flight;

/// <summary>The inputs of a drag build-up besides the airframe, as SI numbers.</summary>
/// <param name="Atmosphere">The air; its density and viscosity set the Reynolds number.</param>
/// <param name="Altitude">Altitude above sea level [m].</param>
/// <param name="Roughness">Height of the surface roughness [m].</param>
/// <param name="JetDiameter">Diameter over which the jet fills the base [m]; zero for a coasting body.</param>
internal readonly record struct DragConditions(IAtmosphere Atmosphere, double Altitude, double Roughness, double JetDiameter);
