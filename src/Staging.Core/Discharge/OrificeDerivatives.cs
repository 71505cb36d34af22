namespace Staging.Core.Discharge;

/// <summary>
/// A signed mass flow from side one to side two and its derivatives with respect to the pressures of both sides, in SI
/// units.
/// </summary>
/// <param name="MassFlow_kg_per_s">Mass flow [kg/s], positive from one to two.</param>
/// <param name="ByPressureOne_kg_per_sPa">Derivative by the pressure of side one [kg/(s Pa)], not negative.</param>
/// <param name="ByPressureTwo_kg_per_sPa">Derivative by the pressure of side two [kg/(s Pa)], not positive.</param>
internal readonly record struct OrificeDerivatives(double MassFlow_kg_per_s, double ByPressureOne_kg_per_sPa,
    double ByPressureTwo_kg_per_sPa);
