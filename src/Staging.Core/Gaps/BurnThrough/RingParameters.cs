using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>The ring that burns on in a chamber as plain SI numbers.</summary>
/// <param name="Hole">Its shape as it burns.</param>
/// <param name="AtOnce">Diameter of the hole that opened at once, over that of the grain [-].</param>
/// <param name="Density">Density of the propellant [kg/m3].</param>
/// <param name="Rate">Burning rate at the reference pressure [m/s].</param>
/// <param name="PressureExponent">Exponent of pressure in that rate [-].</param>
/// <param name="Left">Where the share of its growth that is left stands in the state vector.</param>
internal sealed record RingParameters(
    GrowingHole Hole, double AtOnce, double Density, double Rate, double PressureExponent, int Left)
{
    /// <summary>Mass at rupture [kg].</summary>
    public double Mass => Density * Hole.Volume;

    /// <summary>Growth of the burning sphere where a share of it is left [m].</summary>
    public T Growth<T>(T left)
        where T : struct, IReal<T> => Hole.End * (1 - left);

    /// <summary>Speed of the burning face at a pressure [Pa] [m/s].</summary>
    public T Speed<T>(T pressure)
        where T : struct, IReal<T> => Rate * T.Pow(pressure / BurnRateLaw.ReferencePressure_Pa, PressureExponent);
}
