namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// What enters the tube through an end, a unit of area and time: mass, momentum along the inward direction, energy,
/// mass of products.
/// </summary>
internal readonly record struct EndFlux(double Mass, double Momentum, double Energy, double Products);
