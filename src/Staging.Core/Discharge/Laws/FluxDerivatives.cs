namespace Staging.Core.Discharge;

/// <summary>A mass flux and how it answers to the two pressures, in SI units.</summary>
/// <param name="MassFlux_kg_per_m2s">Mass flux [kg/(m2 s)].</param>
/// <param name="ByUpstreamPressure_s_per_m">Derivative with respect to the upstream pressure [kg/(m2 s Pa) = s/m], not
/// negative.</param>
/// <param name="ByDownstreamPressure_s_per_m">Derivative with respect to the downstream pressure [s/m], not
/// positive.</param>
public readonly record struct FluxDerivatives(double MassFlux_kg_per_m2s, double ByUpstreamPressure_s_per_m,
    double ByDownstreamPressure_s_per_m)
{
    /// <summary>Slopes of a flux G = p0 / sqrt(R T0) phi(p/p0), from phi and its slope.</summary>
    internal static FluxDerivatives FromRatio(in OrificeConditions at, PhiDerivative phi)
    {
        double perPressure = 1 / Math.Sqrt(at.GasConstant_J_per_kgK * at.UpstreamTemperature_K);
        return new FluxDerivatives(
            at.UpstreamPressure_Pa * perPressure * phi.Value,
            perPressure * (phi.Value - at.PressureRatio * phi.ByRatio),
            perPressure * phi.ByRatio);
    }
}

/// <summary>A dimensionless flow function phi(r) [-] and its derivative with respect to r.</summary>
internal readonly record struct PhiDerivative(double Value, double ByRatio)
{
    /// <summary>The product of two functions of r, with its slope.</summary>
    public PhiDerivative Times(PhiDerivative other) => new(Value * other.Value, Value * other.ByRatio + ByRatio * other.Value);
}
