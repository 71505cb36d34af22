namespace Staging.Core.Gaps;

/// <summary>The grain face and its heating as plain SI numbers.</summary>
/// <param name="Effusivity">Thermal effusivity sqrt(k rho c) [W s^0.5/(m2 K)].</param>
/// <param name="Initial">Initial temperature [K].</param>
/// <param name="Ignition">Ignition temperature [K].</param>
/// <param name="ThroatDiameter">Throat diameter of the upper nozzle [m].</param>
/// <param name="Emissivity">Emissivity of the products [-].</param>
/// <param name="ParticleEfficiency">Share of the particle heat taken up [-].</param>
internal readonly record struct GrainParameters(
    double Effusivity, double Initial, double Ignition, double ThroatDiameter, double Emissivity, double ParticleEfficiency);
