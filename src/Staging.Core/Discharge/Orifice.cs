using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>Flow through holes between two gases at rest.</summary>
public static class Orifice
{
    /// <summary>
    /// Below this pressure fall over upstream pressure [-] the square root of the flow functions is replaced by a
    /// smooth odd curve with a finite slope; above it nothing is changed. At one atmosphere the width is 101 Pa.
    /// </summary>
    /// <remarks>
    /// A bare root has an infinite slope at equal pressures and stops any integrator there. The price of the blend:
    /// pressure differences smaller than the width pass too little gas, by 10 % at half the width. Near equal pressures
    /// every flow law also rectifies noise: what leaves is the gas inside, what returns is the gas outside, so an
    /// integrator that chatters about equal pressures draws in outside gas that physics does not. Let inflow within a
    /// fraction of the width carry the gas that is already inside, or keep the pressure tolerance well inside the
    /// width.
    /// </remarks>
    public const double BlendWidth = 1e-3;

    /// <summary>Flow between two gases at rest, positive from one to two.</summary>
    /// <param name="one">Gas on side one.</param>
    /// <param name="two">Gas on side two.</param>
    /// <param name="holes">The holes between them.</param>
    /// <param name="law">How much they pass.</param>
    /// <returns>The flow. Its notes say where the case leaves the range of the law.</returns>
    public static OrificeFlow Flow(GasState one, GasState two, VentHoles holes, IDischargeLaw law)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(two);
        ArgumentNullException.ThrowIfNull(holes);
        ArgumentNullException.ThrowIfNull(law);
        var size = new OrificeSize(holes);
        OrificeSide sideOne = ToSi(one);
        OrificeSide sideTwo = ToSi(two);
        bool forward = sideOne.P >= sideTwo.P;
        OrificeConditions at = forward
            ? OrificeKernel.Conditions(size, sideOne, sideTwo.P)
            : OrificeKernel.Conditions(size, sideTwo, sideOne.P);
        double massFlow = OrificeKernel.SignedMassFlow(law, size, sideOne, sideTwo);
        double critical = law.CriticalPressureRatio(at.HeatCapacityRatio);
        OrificeRegime regime = at.RelativeFall == 0 ? OrificeRegime.None
            : at.PressureRatio > critical ? OrificeRegime.Subsonic
            : OrificeRegime.Choked;
        double ideal = size.Area * at.FluxScale * NozzleFunction.Value(at.RelativeFall, at.HeatCapacityRatio);
        return new OrificeFlow
        {
            MassFlow = MassFlow.FromKilogramsPerSecond(massFlow),
            Upstream = forward ? one : two,
            PressureRatio = at.PressureRatio,
            CriticalPressureRatio = critical,
            Regime = regime,
            AnswersToDownstream = regime != OrificeRegime.Choked || !law.LevelsOffWhenChoked(at.ThicknessToDiameter),
            DischargeCoefficient = ideal > 0 ? Math.Abs(massFlow) / ideal : 0,
            JetSpeed = Speed.FromMetersPerSecond(JetSpeed(at)),
            Notes = Notes(at, law.Validity),
        };
    }

    /// <summary>Flow between two gases at rest with its derivatives by both pressures, for implicit users.</summary>
    /// <param name="one">Gas on side one.</param>
    /// <param name="two">Gas on side two.</param>
    /// <param name="holes">The holes between them.</param>
    /// <param name="law">How much they pass.</param>
    /// <returns>Flow and slopes at fixed temperatures; at equal pressures the slopes of the gas of side one.</returns>
    public static OrificeDerivatives Slopes(GasState one, GasState two, VentHoles holes, IDifferentiableDischargeLaw law)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(two);
        ArgumentNullException.ThrowIfNull(holes);
        ArgumentNullException.ThrowIfNull(law);
        return OrificeKernel.SignedSlopes(law, new OrificeSize(holes), ToSi(one), ToSi(two));
    }

    /// <summary>In what way a case lies outside a range.</summary>
    /// <param name="conditions">The case.</param>
    /// <param name="range">The range.</param>
    /// <returns>The notes; none inside the range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A pressure ratio outside 0 to 1, or a thickness that is negative
    /// or no number.</exception>
    public static DischargeNotes Notes(in OrificeConditions conditions, ValidityRange range)
    {
        ArgumentNullException.ThrowIfNull(range);
        Guard.In(conditions.PressureRatio, 0, 1, property: nameof(conditions.PressureRatio));
        Guard.In(conditions.ThicknessToDiameter, 0, double.MaxValue, property: nameof(conditions.ThicknessToDiameter));
        DischargeNotes notes = DischargeNotes.None;
        if (conditions.PressureRatio < range.MinPressureRatio)
            notes |= DischargeNotes.PressureRatioBelowRange;
        if (conditions.ThicknessToDiameter < range.MinThicknessToDiameter)
            notes |= DischargeNotes.WallThinnerThanRange;
        if (conditions.ThicknessToDiameter > range.MaxThicknessToDiameter)
            notes |= DischargeNotes.WallThickerThanRange;
        return notes;
    }

    /// <summary>A gas state as plain SI numbers.</summary>
    internal static OrificeSide ToSi(GasState state) =>
        new(state.Pressure.Pascals, state.Temperature.Kelvins, state.Gas.Constants);

    // Energy equation, u^2/2 = cp (T0 - T) with T/T0 = r^((gamma-1)/gamma); NACA Report 1135.
    private static double JetSpeed(in OrificeConditions at)
    {
        double g = at.HeatCapacityRatio;
        double r = Math.Max(at.PressureRatio, ChokedFlow.Unchecked.CriticalPressureRatio(g));
        double cp = g / (g - 1) * at.GasConstant_J_per_kgK;
        return Math.Sqrt(2 * cp * at.UpstreamTemperature_K * Math.Max(0, 1 - Math.Pow(r, (g - 1) / g)));
    }
}
