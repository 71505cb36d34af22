namespace Staging.Core.Discharge;

/// <summary>
/// A constant coefficient times the ideal isentropic flow: G = Cd p0 / sqrt(R T0) psi(r). Right for nozzles
/// and rounded holes, whose jet does not contract; for a sharp edge see <see cref="SharpEdgedLaw"/>.
/// </summary>
/// <remarks>
/// psi: NACA Report 1135 (Ames Research Staff 1953); smoothed within <see cref="Orifice.BlendWidth"/> of equal
/// pressures. For a sharp hole a constant 0.6 is about 19 % low at the critical ratio and 29 % low against a vacuum.
/// </remarks>
public sealed record ConstantCoefficientLaw : IDischargeLaw
{
    /// <summary>Discharge coefficient Cd [-], 0.1 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double Coefficient { get; init => field = Guard.In(value, 0.1, 1); }

    /// <summary>Where the coefficient comes from.</summary>
    public required Provenance Provenance { get; init => field = Guard.NotNull(value); }

    /// <inheritdoc/>
    /// <remarks>Every pressure ratio and wall: the coefficient itself must suit the hole.</remarks>
    public ValidityRange Validity => new(0, 0, double.PositiveInfinity, Provenance);

    /// <summary>An ideal nozzle, Cd = 1: the most that an opening can pass.</summary>
    public static ConstantCoefficientLaw Ideal { get; } = new()
    {
        Coefficient = 1,
        Provenance = new Provenance { Source = "Isentropic flow without contraction, an upper bound", How = Evidence.ComputedFromFormula },
    };

    /// <summary>
    /// Short cylindrical hole, square at the inlet: Cd = 0.825, the middle of Weisbach's 0.81 to 0.84 for gases.
    /// </summary>
    public static ConstantCoefficientLaw ShortCylinder { get; } = new()
    {
        Coefficient = 0.825,
        Provenance = Weisbach("short cylindrical mouthpiece, 0.81 to 0.84")
    };

    /// <summary>
    /// Short cylindrical hole, rounded at the inlet: Cd = 0.925, the middle of Weisbach's 0.92 to 0.93 for gases.
    /// </summary>
    public static ConstantCoefficientLaw RoundedInlet { get; } = new()
    {
        Coefficient = 0.925,
        Provenance = Weisbach("the same rounded at the inner end, 0.92 to 0.93")
    };

    /// <inheritdoc/>
    public double MassFlux_kg_per_m2s(in OrificeConditions conditions) =>
        Coefficient * conditions.FluxScale * NozzleFunction.Value(conditions.RelativeFall, conditions.HeatCapacityRatio);

    /// <inheritdoc/>
    public (double MassFlux_kg_per_m2s, double ByUpstreamPressure_s_per_m, double ByDownstreamPressure_s_per_m) SlopesAt(
        in OrificeConditions conditions)
    {
        PhiDerivative psi = NozzleFunction.WithSlope(conditions.RelativeFall, conditions.HeatCapacityRatio);
        return new PhiDerivative(Coefficient * psi.Value, Coefficient * psi.ByRatio).Flux(conditions);
    }

    private static Provenance Weisbach(string row) => new()
    {
        Source = "Weisbach's coefficients for the flow of air, quoted in Encyclopaedia Britannica, 11th ed. (1911), article Hydraulics",
        Locator = "section 63, " + row,
        How = Evidence.SeenInSource,
    };
}
