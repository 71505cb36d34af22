using Staging.Core.Discharge;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>A discharge law on numbers that may carry derivatives.</summary>
internal static class HoleFlux
{
    /// <summary>Increment of the ratio of heat capacities [-], by which a flux moves evenly.</summary>
    private const double Increment = 1e-6;

    /// <summary>Mass flux [kg/(m2 s)] of a gas at a pressure through holes to a lower pressure [Pa].</summary>
    /// <remarks>
    /// A law gives its slopes by the pressures. By R T every flux at given pressures falls as the root, as no law is
    /// given any other size of the gas to measure it by. What is left is a difference over the ratio of heat
    /// capacities: that moves little, and only where gases mix.
    /// </remarks>
    public static T Of<T>(IDischargeLaw law, in OrificeSize size, in Zone<T> gas, T pressure, T beyond)
        where T : struct, IReal<T>
    {
        double gamma = gas.Gamma.Value;
        OrificeConditions at = Conditions(size, gas, pressure, beyond, gamma);
        if (!T.HasDerivatives)
            return law.MassFlux_kg_per_m2s(at);
        (double flux, double byPressure, double byBeyond) = law.SlopesAt(at);
        double byGamma = (law.MassFlux_kg_per_m2s(Conditions(size, gas, pressure, beyond, gamma + Increment)) - flux) / Increment;
        T perMass = gas.R * gas.Temperature;
        return flux + byPressure * Change(pressure) + byBeyond * Change(beyond) + byGamma * Change(gas.Gamma)
            - 0.5 * flux / perMass.Value * Change(perMass);
    }

    private static OrificeConditions Conditions<T>(in OrificeSize size, in Zone<T> gas, T pressure, T beyond, double gamma)
        where T : struct, IReal<T> =>
        new(pressure.Value, gas.Temperature.Value, beyond.Value, gas.R.Value, gamma, size.Diameter, size.Thickness);

    /// <summary>The derivatives of a number alone.</summary>
    private static T Change<T>(T x)
        where T : struct, IReal<T> => x - x.Value;
}
