namespace Staging.Core.Gaps;

/// <summary>
/// How soon a grain is lit at the earliest by a burning piece that lodges before it: as if the flame between them fed
/// back to the grain what sustains steady burning.
/// </summary>
/// <remarks>
/// In a solid that burns at a rate r with its surface at Ts heat has spread as T - T0 = (Ts - T0) exp(-x r/alpha),
/// which takes the flux q = rho c r (Ts - T0) and holds the heat rho c (Ts - T0) alpha/r. That flux gathers that
/// heat in alpha/r^2: the delay. The surface reaches Ts already at pi/4 of it, as a face under constant flux (<see
/// cref="UpperGrain.TimeUnderFlux"/>). An optimistic bound: no flame before a cold grain feeds back so much.
/// </remarks>
internal static class ContactIgnition
{
    /// <summary>
    /// Time in which the flux that sustains burning gathers the heat of the layer ahead of a steady flame, alpha/r^2
    /// [s].
    /// </summary>
    /// <param name="diffusivity">Thermal diffusivity k/(rho c) of the grain [m2/s].</param>
    /// <param name="rate">Burning rate [m/s].</param>
    public static double Delay(double diffusivity, double rate) => diffusivity / (rate * rate);
}
