using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// Fragments that burn on both sides at the rate of the chamber pressure: the burnt share of their mass grows by 2
/// r(p)/thickness while their faces stay as large as they are.
/// </summary>
/// <param name="Mass">Their mass [kg].</param>
/// <param name="ShareRate">Rate at which the burnt share grows at the reference pressure [1/s].</param>
/// <param name="PressureExponent">Exponent of pressure in that rate [-].</param>
/// <param name="Unburnt">Where the unburnt share stands in the state vector.</param>
internal sealed record PlateParameters(double Mass, double ShareRate, double PressureExponent, int Unburnt)
{
    /// <summary>Rate at which the burnt share grows at a pressure [Pa] [1/s].</summary>
    public T Rate<T>(T pressure)
        where T : struct, IReal<T> => ShareRate * T.Pow(pressure / BurnRateLaw.ReferencePressure_Pa, PressureExponent);
}
