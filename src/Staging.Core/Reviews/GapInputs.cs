using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Reviews;

/// <summary>Uncertain inputs of a gap, by name, for studies. Each is one lambda: write your own in the same way where one is missing.</summary>
public static class GapInputs
{
    /// <summary>Name of the breakaway force.</summary>
    internal const string BreakawayPath = "joint.breakaway";

    /// <summary>What is least known about <see cref="StartingGaps.Bore18mm"/>, over the ranges told with it: a start, to be narrowed by what you measure.</summary>
    public static ImmutableArray<StudyInput<GapProblem>> Judged { get; } =
    [
        Breakaway(Spread.Triangular(10, 20, 60)),
        FragmentMass(Spread.Triangular(0.1, 0.19, 0.3)),
        FragmentBurnTime(Spread.Triangular(15, 25, 40)),
        GasFraction(Spread.Triangular(0.55, 0.65, 0.7)),
        IgnitionTemperature(Spread.Uniform(723, 823)),
        Conductivity(Spread.Triangular(0.15, 0.3, 0.7)),
        ParticleEfficiency(Spread.Triangular(0.03, 0.25, 0.6)),
    ];

    /// <summary>Why those ranges.</summary>
    public static Provenance JudgedSource { get; } = new()
    {
        Source = "Retention 10 to 60 N: not published; fragments: published burn rates differ by 40 %, the last web by as much; gas fraction 0.55 to 0.7: hot products by "
            + "equilibrium; ignition 723 to 823 K: hot-bath tests; conductivity 0.15 to 0.7 W/(m K): no measurement found; particle efficiency: a guess over its whole range",
        How = Evidence.Judgement,
    };

    /// <summary>The breakaway force of the joint; the sliding force keeps its ratio to it.</summary>
    /// <param name="spread">How it scatters [N].</param>
    /// <returns>The input <c>joint.breakaway</c>.</returns>
    public static StudyInput<GapProblem> Breakaway(Distribution spread) => StudyInput.Of<GapProblem>(BreakawayPath, "N", spread, WithBreakaway);

    /// <summary>Mass of the fragments that burn after burn-through.</summary>
    /// <param name="spread">How it scatters [g].</param>
    /// <returns>The input <c>source.fragment-mass</c>.</returns>
    public static StudyInput<GapProblem> FragmentMass(Distribution spread) =>
        Source("source.fragment-mass", "g", spread, (s, v) => s with { FragmentMass = Mass.FromGrams(v) });

    /// <summary>Time over which the fragments burn.</summary>
    /// <param name="spread">How it scatters [ms].</param>
    /// <returns>The input <c>source.burn-time</c>.</returns>
    public static StudyInput<GapProblem> FragmentBurnTime(Distribution spread) =>
        Source("source.burn-time", "ms", spread, (s, v) => s with { FragmentBurnTime = Duration.FromMilliseconds(v) });

    /// <summary>Chamber pressure at burn-through.</summary>
    /// <param name="spread">How it scatters [kPa], absolute.</param>
    /// <returns>The input <c>source.chamber-pressure</c>.</returns>
    public static StudyInput<GapProblem> ChamberPressure(Distribution spread) =>
        Source("source.chamber-pressure", "kPa", spread, (s, v) => s with { ChamberPressure = Pressure.FromKilopascals(v) });

    /// <summary>Share of gas in the products.</summary>
    /// <param name="spread">How it scatters [-].</param>
    /// <returns>The input <c>source.gas-fraction</c>.</returns>
    public static StudyInput<GapProblem> GasFraction(Distribution spread) =>
        Source("source.gas-fraction", "-", spread, (s, v) => s with { Products = s.Products with { GasMassFraction = v } });

    /// <summary>Ignition temperature of the grain.</summary>
    /// <param name="spread">How it scatters [K].</param>
    /// <returns>The input <c>grain.ignition</c>.</returns>
    public static StudyInput<GapProblem> IgnitionTemperature(Distribution spread) =>
        Grain("grain.ignition", "K", spread, (g, v) => g with { IgnitionTemperature = Temperature.FromKelvins(v) });

    /// <summary>Thermal conductivity of the grain.</summary>
    /// <param name="spread">How it scatters [W/(m K)].</param>
    /// <returns>The input <c>grain.conductivity</c>.</returns>
    public static StudyInput<GapProblem> Conductivity(Distribution spread) =>
        Grain("grain.conductivity", "W/(m K)", spread, (g, v) => g with { Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(v) });

    /// <summary>How much heat the particles bring to the grain.</summary>
    /// <param name="spread">How it scatters [-].</param>
    /// <returns>The input <c>closures.particle-efficiency</c>.</returns>
    public static StudyInput<GapProblem> ParticleEfficiency(Distribution spread) => StudyInput.Of<GapProblem>(
        "closures.particle-efficiency", "-", spread, (p, v) => Design(p, d => d with { Closures = d.Closures with { ParticleEfficiency = v } }));

    /// <summary>A gap with another breakaway force [N]; the sliding force keeps its ratio to it.</summary>
    internal static GapProblem WithBreakaway(GapProblem problem, double newtons) => Design(problem, d =>
    {
        FrictionJoint coupler = d.Joint.Coupler;
        double before = coupler.BreakawayForce.Newtons, ratio = before > 0 ? coupler.SlidingForce.Newtons / before : 1;
        coupler = coupler with { BreakawayForce = Force.FromNewtons(newtons), SlidingForce = Force.FromNewtons(ratio * newtons) };
        return d with { Joint = d.Joint with { Coupler = coupler } };
    });

    private static GapProblem Design(GapProblem problem, Func<GapDesign, GapDesign> change) => problem with { Design = change(problem.Design) };

    private static StudyInput<GapProblem> Source(string path, string unit, Distribution spread, Func<BurnThroughSource, double, BurnThroughSource> with) =>
        StudyInput.Of<GapProblem>(path, unit, spread, (p, v) => Design(p, d => d.Source is GapSource.Afterburn { Motor: { } motor }
            ? d with { Source = with(motor, v) }
            : throw new ArgumentException($"The input {path} belongs to one motor with an afterburn; the source of this gap is of another kind.", nameof(p))));

    private static StudyInput<GapProblem> Grain(string path, string unit, Distribution spread, Func<UpperGrain, double, UpperGrain> with) =>
        StudyInput.Of<GapProblem>(path, unit, spread, (p, v) => Design(p, d => d with { Grain = with(d.Grain, v) }));
}
