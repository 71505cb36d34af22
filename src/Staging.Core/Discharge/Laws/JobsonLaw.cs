using Staging.Core.Gases;

namespace Staging.Core.Discharge;

/// <summary>
/// A sharp edge from the momentum balance: the contraction of the jet at any pressure ratio from its contraction in
/// incompressible flow. The theoretical companion of <see cref="SharpEdgedLaw"/>, for any gas and for edges whose
/// incompressible coefficient is known.
/// </summary>
/// <remarks>
/// D. A. Jobson, On the flow of a compressible fluid through orifices, Proc. Inst. Mech. Engrs 169 (1955) 767-776;
/// equations derived again from the momentum balance with the force defect f = 1/Ci - 1/(2 Ci^2), whose share in the
/// wall force is taken as unchanged: subsonic Cc = (1 - sqrt(1 - 4 f r^(2/gamma) (1-r)/psi^2)) / (2 f r^(1/gamma));
/// choked, with B = gamma r* + r* - r, Cc = (B - sqrt(B^2 - 4 f C*^2 (1-r))) / (2 f C*^2). Within 0.5 % of the exact
/// plane solution for gamma 1.4 with Ci = 0.611, 3 % above Perry's air measurements in the limit r = 0.
/// </remarks>
public sealed record JobsonLaw : IDischargeLaw
{
    private static readonly ValidityRange Range = new(0, 0, 0.5, new Provenance
    {
        Source = "Thickness: judgement, as for every sharp edge; pressure ratio: D. A. Jobson, Proc. Inst. Mech. Engrs 169 (1955) "
            + "767-776, above and below critical",
        How = Evidence.Judgement,
    });

    /// <summary>
    /// Contraction coefficient Ci of the edge in incompressible flow [-], 0.5 (Borda's mouthpiece) to 0.9; a sharp
    /// round hole 0.60.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double IncompressibleContraction { get; init => field = Guard.In(value, 0.5, 0.9); }

    /// <inheritdoc/>
    public ValidityRange Validity => Range;

    /// <inheritdoc/>
    public bool LevelsOffWhenChoked(double thicknessToDiameter) => false;

    /// <summary>Contraction coefficient at a pressure ratio.</summary>
    /// <param name="pressureRatio">Downstream over upstream pressure r [-], 0 to 1.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 5/3.</param>
    /// <returns>Cc [-], which here is also the discharge coefficient.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public double Coefficient(double pressureRatio, double gamma)
    {
        Guard.In(pressureRatio, 0, 1, property: nameof(pressureRatio));
        Guard.In(gamma, 1.01, 5.0 / 3.0, property: nameof(gamma));
        return Contraction(1 - pressureRatio, gamma).Value;
    }

    /// <inheritdoc/>
    public double MassFlux_kg_per_m2s(in OrificeConditions conditions)
    {
        double d = conditions.RelativeFall;
        double gamma = conditions.HeatCapacityRatio;
        return Contraction(d, gamma).Value * conditions.FluxScale * NozzleFunction.Value(d, gamma);
    }

    /// <inheritdoc/>
    public (double MassFlux_kg_per_m2s, double ByUpstreamPressure_s_per_m, double ByDownstreamPressure_s_per_m) SlopesAt(
        in OrificeConditions conditions)
    {
        PhiDerivative cc = Contraction(conditions.RelativeFall, conditions.HeatCapacityRatio);
        PhiDerivative psi = NozzleFunction.WithSlope(conditions.RelativeFall, conditions.HeatCapacityRatio);
        return cc.Times(psi).Flux(conditions);
    }

    private PhiDerivative Contraction(double d, double gamma)
    {
        double ci = IncompressibleContraction;
        double f = 1 / ci - 1 / (2 * ci * ci);
        double critical = IsentropicFlow.Unchecked.CriticalPressureRatio(gamma);
        return 1 - d >= critical ? Subsonic(d, gamma, f) : Choked(d, gamma, f, critical);
    }

    // With q = psi^2/(2d) and x = r^(1/gamma): Cc = (x/q) / (1 + sqrt(1 - 2 f x^2/q)), the textbook form without its
    // cancellation.
    private static PhiDerivative Subsonic(double d, double gamma, double f)
    {
        double r = 1 - d;
        double x = Math.Pow(r, 1 / gamma);
        double dx = x / (gamma * r);
        PhiDerivative q = NozzleFunction.QuotientWithSlope(d, gamma);
        double c = x / q.Value;
        double dc = (dx - c * q.ByRatio) / q.Value;
        double s = Math.Sqrt(1 - 2 * f * x * c);
        double ds = -f * (dx * c + x * dc) / s;
        return new PhiDerivative(c / (1 + s), (dc - c * ds / (1 + s)) / (1 + s));
    }

    private static PhiDerivative Choked(double d, double gamma, double f, double critical)
    {
        double cStar = IsentropicFlow.Unchecked.CriticalFlowFactor(gamma);
        double k = 4 * f * cStar * cStar;
        double b = gamma * critical + critical - (1 - d);
        double s = Math.Sqrt(b * b - k * d);
        double ds = (k / 2 - b) / s;
        double cc = 2 * d / (b + s);
        return new PhiDerivative(cc, (-2 - cc * (ds - 1)) / (b + s));
    }
}
