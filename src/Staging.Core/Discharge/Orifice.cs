using System.Collections.Immutable;
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
    /// A plain square root has an infinite slope at equal pressures, which stalls any integrator. The cost of the
    /// blend: pressure differences smaller than the width pass too little gas, by 10 % at half the width. Near equal
    /// pressures every flow law also rectifies noise: what leaves is the gas inside, what returns is the gas outside,
    /// so an integrator that chatters around equal pressures draws in outside gas that would not enter in reality. Let
    /// inflow within a fraction of the width carry the gas that is already inside, or keep the pressure tolerance well
    /// inside the width.
    /// </remarks>
    public const double BlendWidth = 1e-3;

    /// <summary>Flow between two gases at rest, positive from one to two.</summary>
    /// <param name="one">Gas on side one.</param>
    /// <param name="two">Gas on side two.</param>
    /// <param name="holes">The holes between them.</param>
    /// <param name="law">How much they pass.</param>
    /// <returns>The flow. Its findings say where the case leaves the range of the law.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The wall is thicker, in hole diameters, than the law
    /// accepts, and the pressures differ.</exception>
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
        bool isChoked = at.PressureRatio <= critical;
        double ideal = size.Area * at.FluxScale * NozzleFunction.Value(at.RelativeFall, at.HeatCapacityRatio);
        return new OrificeFlow(
            MassFlow.FromKilogramsPerSecond(massFlow),
            upstream: forward ? one : two,
            at.PressureRatio,
            critical,
            answersToDownstream: !isChoked || !law.LevelsOffWhenChoked(at.ThicknessToDiameter),
            coefficient: ideal > 0 ? Math.Abs(massFlow) / ideal : 0,
            Speed.FromMetersPerSecond(JetSpeed(at)),
            Findings(at.PressureRatio, new Opening { Holes = holes, Law = law }));
    }

    /// <summary>
    /// Flow through openings in series, such as the holes in the walls of nested tubes: one flow through
    /// all, the pressures between them solved for.
    /// </summary>
    /// <remarks>
    /// Steady and adiabatic: the stagnation temperature stays that of the upstream gas, and each jet comes to rest in
    /// the space behind its hole, which must be large compared with the hole; jets aimed at the next hole pass more.
    /// Equal holes choke at the last, never at the first.
    /// </remarks>
    /// <param name="one">Gas on side one.</param>
    /// <param name="two">Gas on side two.</param>
    /// <param name="openings">The openings from side one to side two, 1 to 16.</param>
    /// <returns>The flow, positive from one to two, the pressures between the openings, and the flow of each.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A wall is thicker, in hole diameters, than its law
    /// accepts, and the pressures differ.</exception>
    /// <exception cref="ArgumentException">No opening or more than 16.</exception>
    public static OpeningsFlow InSeries(GasState one, GasState two, params EquatableArray<Opening> openings)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(two);
        return HolesInSeries.Flow(one, two, openings);
    }

    /// <summary>Flow through openings in parallel between the same two spaces: their flows add.</summary>
    /// <param name="one">Gas on side one.</param>
    /// <param name="two">Gas on side two.</param>
    /// <param name="openings">The openings, at least one.</param>
    /// <returns>The flow of all and of each, positive from one to two.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A wall is thicker, in hole diameters, than its law
    /// accepts, and the pressures differ.</exception>
    /// <exception cref="ArgumentException">No opening.</exception>
    public static OpeningsFlow InParallel(GasState one, GasState two, params EquatableArray<Opening> openings)
    {
        if (openings.Length == 0)
            throw new ArgumentException("There is no opening; give at least one.", nameof(openings));
        ImmutableArray<OrificeFlow> members = [.. openings.Select(o => Flow(one, two, o.Holes, o.Law))];
        return new OpeningsFlow(MassFlow.FromKilogramsPerSecond(members.Sum(m => m.MassFlow.KilogramsPerSecond)), [], members);
    }

    /// <summary>
    /// Flow between two gases at rest with its derivatives with respect to both pressures, for implicit solvers.
    /// </summary>
    /// <param name="one">Gas on side one.</param>
    /// <param name="two">Gas on side two.</param>
    /// <param name="holes">The holes between them.</param>
    /// <param name="law">How much they pass.</param>
    /// <returns>Flow [kg/s], positive from one to two, and slopes [kg/(s Pa)] at fixed temperatures: by the pressure of
    /// side one not negative, by that of side two not positive; at equal pressures those of the gas of side
    /// one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The wall is thicker, in hole diameters, than the law
    /// accepts.</exception>
    public static (double MassFlow_kg_per_s, double ByPressureOne_kg_per_sPa, double ByPressureTwo_kg_per_sPa) Slopes(
        GasState one, GasState two, VentHoles holes, IDischargeLaw law)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(two);
        ArgumentNullException.ThrowIfNull(holes);
        ArgumentNullException.ThrowIfNull(law);
        OrificeDerivatives s = OrificeKernel.SignedSlopes(law, new OrificeSize(holes), ToSi(one), ToSi(two));
        return (s.MassFlow_kg_per_s, s.ByPressureOne_kg_per_sPa, s.ByPressureTwo_kg_per_sPa);
    }

    /// <summary>A gas state as plain SI numbers.</summary>
    internal static OrificeSide ToSi(GasState state) =>
        new(state.Pressure.Pascals, state.Temperature.Kelvins, state.Gas.Constants);

    private static ImmutableArray<ModelFinding> Findings(double pressureRatio, Opening opening)
    {
        double least = opening.Law.Validity.MinPressureRatio;
        return pressureRatio >= least ? opening.Check("Holes") :
        [
            .. opening.Check("Holes"),
            new ModelFinding(FindingSeverity.Warning, "DIS003", "PressureRatio", Invariant.Text(
                $"The pressure ratio is {pressureRatio:G4}; the discharge law holds from "
                    + $"{least:G4} ({opening.Law.Validity.Basis.Source}).")),
        ];
    }

    // Energy equation, u^2/2 = cp (T0 - T) with T/T0 = r^((gamma-1)/gamma); NACA Report 1135.
    private static double JetSpeed(in OrificeConditions at)
    {
        double g = at.HeatCapacityRatio;
        double r = Math.Max(at.PressureRatio, IsentropicFlow.Unchecked.CriticalPressureRatio(g));
        double cp = g / (g - 1) * at.GasConstant_J_per_kgK;
        return Math.Sqrt(2 * cp * at.UpstreamTemperature_K * Math.Max(0, 1 - Math.Pow(r, (g - 1) / g)));
    }
}
