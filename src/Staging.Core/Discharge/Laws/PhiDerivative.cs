namespace Staging.Core.Discharge;

/// <summary>A dimensionless flow function phi(r) [-] and its derivative with respect to r.</summary>
internal readonly record struct PhiDerivative(double Value, double ByRatio)
{
    /// <summary>The product of two functions of r, with its slope.</summary>
    public PhiDerivative Times(PhiDerivative other) => new(Value * other.Value, Value * other.ByRatio + ByRatio * other.Value);

    /// <summary>The flux G = p0 / sqrt(R T0) phi(p/p0) and its derivatives with respect to p0 and p.</summary>
    public (double Flux, double ByUpstream, double ByDownstream) Flux(in OrificeConditions at)
    {
        double perPressure = 1 / Math.Sqrt(at.GasConstant_J_per_kgK * at.UpstreamTemperature_K);
        return (at.UpstreamPressure_Pa * perPressure * Value, perPressure * (Value - at.PressureRatio * ByRatio), perPressure * ByRatio);
    }
}
