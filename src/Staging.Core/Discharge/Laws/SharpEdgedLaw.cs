namespace Staging.Core.Discharge;

/// <summary>
/// A hole with a sharp edge in a thin wall: the jet contracts behind the hole, less so as the downstream pressure
/// falls, so the coefficient rises from 0.60 at equal pressures to 0.84 against a vacuum.
/// </summary>
/// <remarks>
/// G = Cd(r) p0 / sqrt(R T0) psi(r), with psi held at its choked value below the critical ratio and Cd = 0.8414 -
/// 0.1002 r + 0.8415 r^2 - 3.9 r^3 + 4.6001 r^4 - 1.6827 r^5, fitted to the air measurements of J. A. Perry, Critical
/// flow through sharp-edged orifices, Trans. ASME 71 (1949) 757-764. The polynomial was seen in a secondary source that
/// had lost its minus signs; they were restored from the end values and the monotone shape; it lies within 1 % of the
/// exact plane solution (S. A. Chaplygin, On gas jets, 1904) at the critical ratio. Below it the flow keeps rising: by
/// 14 % from the critical ratio to a vacuum. Smoothed within <see cref="Orifice.BlendWidth"/> of equal pressures. The
/// hole must be small compared with the wall around it. Uncertainty: 3 % up to a wall of 0.3 diameters; up to 0.5 it is
/// 5 %, because there <see cref="ShortTubeLaw"/>, also partly a judgement, already lies up to 4.7 % higher.
/// </remarks>
public sealed record SharpEdgedLaw : IDischargeLaw
{
    private static readonly ValidityRange Range = new(0, 0, 0.5, new Provenance
    {
        Source = "Thickness: judgement from Encyclopaedia Britannica, 11th ed. (1911), Hydraulics (the jet contracts for about half a "
            + "diameter, and springs "
            + "clear of a plate thinner than the jet is wide); pressure ratio: J. A. Perry, Trans. ASME 71 (1949) 757-764, fitted from 0 "
                + "to 1",
        How = Evidence.Judgement,
    });

    /// <summary>Perry's mean coefficient.</summary>
    public static SharpEdgedLaw Perry { get; } = new() { EdgeFactor = 1 };

    /// <summary>
    /// Factor on Perry's coefficient [-], 0.9 to 1.18: 1 is the nominal sharp edge; a slightly rounded or burnt edge
    /// passes more. The range is an engineering judgement.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double EdgeFactor { get; init => field = Guard.In(value, 0.9, 1.18); }

    /// <inheritdoc/>
    public ValidityRange Validity => Range;

    /// <inheritdoc/>
    public bool LevelsOffWhenChoked(double thicknessToDiameter) => false;

    /// <summary>Perry's discharge coefficient.</summary>
    /// <param name="pressureRatio">Downstream over upstream pressure r [-], 0 to 1.</param>
    /// <returns>Cd [-], from 0.8414 at r = 0 to 0.6001 at r = 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double Coefficient(double pressureRatio) => Polynomial(Guard.In(pressureRatio, 0, 1, property: nameof(pressureRatio)));

    /// <inheritdoc/>
    public double MassFlux_kg_per_m2s(in OrificeConditions conditions) =>
        EdgeFactor * Polynomial(conditions.PressureRatio) * conditions.FluxScale
        * NozzleFunction.Value(conditions.RelativeFall, conditions.HeatCapacityRatio);

    /// <inheritdoc/>
    public (double MassFlux_kg_per_m2s, double ByUpstreamPressure_s_per_m, double ByDownstreamPressure_s_per_m) SlopesAt(
        in OrificeConditions conditions)
    {
        PhiDerivative cd = WithSlope(conditions.PressureRatio);
        PhiDerivative psi = NozzleFunction.WithSlope(conditions.RelativeFall, conditions.HeatCapacityRatio);
        return new PhiDerivative(EdgeFactor * cd.Value, EdgeFactor * cd.ByRatio).Times(psi).Flux(conditions);
    }

    /// <summary>Perry's coefficient and its derivative with respect to r.</summary>
    internal static PhiDerivative WithSlope(double r) =>
        new(Polynomial(r), -0.1002 + r * (1.683 + r * (-11.7 + r * (18.4004 - r * 8.4135))));

    private static double Polynomial(double r) => 0.8414 + r * (-0.1002 + r * (0.8415 + r * (-3.9 + r * (4.6001 - r * 1.6827))));
}
