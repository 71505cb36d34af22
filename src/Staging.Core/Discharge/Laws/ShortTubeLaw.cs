using Staging.Core.Gases;

namespace Staging.Core.Discharge;

/// <summary>
/// A plain hole through a wall of any thickness: a sharp edge while the wall is thin, a short tube in which the jet
/// fills the hole again when it is thick.
/// </summary>
/// <remarks>
/// With L/d = wall thickness over diameter. Thin (up to 0.3): <see cref="SharpEdgedLaw"/> (Perry 1949). Thick (from
/// 1.2): at equal pressures Cdu = 0.827 - 0.0085 L/d (A. Lichtarowicz, R. K. Duggins and E. Markland, J. Mech. Eng.
/// Sci. 7 (1965) 210-219, for 2 to 10, from memory); at and below the critical ratio Cd* = 0.863 whatever the length
/// between 1 and 7 diameters (A. J. Ward-Smith, Int. J. Heat and Fluid Flow 1 (1979) 123-132; the plateau was seen in
/// its abstract, the number is from memory), falling with the slope of Cdu beyond 7. Judgements made in this
/// library: between the two pressures Cd rises as s (2 - s) with s = (1-r)/(1-r*), which joins both with continuous
/// slope; between 0.3 and 1.2 thin and thick are blended by a smooth step, where the real jet may flip between the two
/// states; the line of Cdu is extrapolated beyond the 2 to 10 of its source, down to 0.3 (0.8 % up from 2 to 1.2) and
/// up to 20 (11 % down from 10). Uncertainty: 3 % up to 0.3, 10 % from there to 1.2, 5 % to 2, 3 % to 7. Friction at
/// low Reynolds number is left out: <see cref="IncompressibleCoefficient"/> gives its effect. A wall thicker than 20
/// diameters is rejected: that is a pipe with friction, and a coefficient would be wrong.
/// </remarks>
public sealed record ShortTubeLaw : IDischargeLaw
{
    private const double ThinLimit = 0.3;
    private const double ThickLimit = 1.2;
    private const double PlateauEnd = 7;
    private const double Plateau = 0.863;
    private const double LengthLimit = 20;

    private static readonly ValidityRange Range = new(0, 0, PlateauEnd, new Provenance
    {
        Source = "A. J. Ward-Smith, Int. J. Heat and Fluid Flow 1 (1979) 123-132: critical coefficient level for thickness up to about 7 "
            + "diameters",
        How = Evidence.FromMemory,
    });

    private ShortTubeLaw()
    {
    }

    /// <summary>The law; it has no parameters.</summary>
    public static ShortTubeLaw SquareInlet { get; } = new();

    /// <inheritdoc/>
    public ValidityRange Validity => Range;

    /// <inheritdoc/>
    /// <remarks>20 diameters.</remarks>
    public double ThicknessToDiameterLimit => LengthLimit;

    /// <inheritdoc/>
    public bool LevelsOffWhenChoked(double thicknessToDiameter) => thicknessToDiameter >= ThickLimit;

    /// <summary>
    /// Coefficient of a thick hole in incompressible flow with its loss to friction: 1/Cd = 1/Cdu + (20/Re)(1 + 2.25
    /// L/d), Lichtarowicz, Duggins and Markland 1965.
    /// </summary>
    /// <param name="thicknessToDiameter">L/d [-], 2 to 10.</param>
    /// <param name="reynolds">Reynolds number of the hole by its ideal speed [-], 10 to 1e8.</param>
    /// <returns>Cd [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside the range of the source.</exception>
    public static double IncompressibleCoefficient(double thicknessToDiameter, double reynolds)
    {
        Guard.In(thicknessToDiameter, 2, 10, property: nameof(thicknessToDiameter));
        Guard.In(reynolds, 10, 1e8, property: nameof(reynolds));
        return 1 / (1 / Cdu(thicknessToDiameter) + 20 / reynolds * (1 + 2.25 * thicknessToDiameter));
    }

    /// <summary>Discharge coefficient of the law.</summary>
    /// <param name="pressureRatio">Downstream over upstream pressure r [-], 0 to 1.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 5/3.</param>
    /// <param name="thicknessToDiameter">L/d [-], 0 to 20.</param>
    /// <returns>Cd [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double Coefficient(double pressureRatio, double gamma, double thicknessToDiameter)
    {
        Guard.In(pressureRatio, 0, 1, property: nameof(pressureRatio));
        Guard.In(gamma, 1.01, 5.0 / 3.0, property: nameof(gamma));
        return Blend(1 - pressureRatio, gamma, thicknessToDiameter).Value;
    }

    /// <inheritdoc/>
    /// <exception cref="ArgumentOutOfRangeException">The wall is thicker than 20 diameters.</exception>
    public double MassFlux_kg_per_m2s(in OrificeConditions conditions)
    {
        double d = conditions.RelativeFall;
        double gamma = conditions.HeatCapacityRatio;
        return Blend(d, gamma, conditions.ThicknessToDiameter).Value * conditions.FluxScale * NozzleFunction.Value(d, gamma);
    }

    /// <inheritdoc/>
    /// <exception cref="ArgumentOutOfRangeException">The wall is thicker than 20 diameters.</exception>
    public (double MassFlux_kg_per_m2s, double ByUpstreamPressure_s_per_m, double ByDownstreamPressure_s_per_m) SlopesAt(
        in OrificeConditions conditions)
    {
        double d = conditions.RelativeFall;
        double gamma = conditions.HeatCapacityRatio;
        PhiDerivative cd = Blend(d, gamma, conditions.ThicknessToDiameter);
        return cd.Times(NozzleFunction.WithSlope(d, gamma)).Flux(conditions);
    }

    private static PhiDerivative Blend(double d, double gamma, double length)
    {
        Guard.In(length, 0, LengthLimit, property: "ThicknessToDiameter");
        double t = Math.Clamp((length - ThinLimit) / (ThickLimit - ThinLimit), 0, 1);
        double thickShare = t * t * (3 - 2 * t);
        PhiDerivative thin = thickShare < 1 ? SharpEdgedLaw.WithSlope(1 - d) : default;
        PhiDerivative thick = thickShare > 0 ? Thick(d, gamma, length) : default;
        return new PhiDerivative(
            (1 - thickShare) * thin.Value + thickShare * thick.Value,
            (1 - thickShare) * thin.ByRatio + thickShare * thick.ByRatio);
    }

    private static PhiDerivative Thick(double d, double gamma, double length)
    {
        double critical = IsentropicFlow.Unchecked.CriticalPressureRatio(gamma);
        double low = Cdu(length);
        double rise = Plateau - 0.0085 * Math.Max(0, length - PlateauEnd) - low;
        double s = Math.Min(1, d / (1 - critical));
        return new PhiDerivative(low + rise * s * (2 - s), -rise * 2 * (1 - s) / (1 - critical));
    }

    private static double Cdu(double length) => 0.827 - 0.0085 * length;
}
