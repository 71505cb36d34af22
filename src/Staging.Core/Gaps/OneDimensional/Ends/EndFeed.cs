using Staging.Core.Gases;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// A known flow of products into the booster's end, whatever the pressure there: mass a unit of bore [kg/(m2 s)] and
/// total enthalpy [J/kg].
/// </summary>
internal readonly record struct EndFeed(double Mass, double Enthalpy, GasConstants Gas);
