using Staging.Core.Gaps;
using UnitsNet;

namespace GapRows;

/// <summary>One input at a time over its published or judged range, for the gap that practice calls dependable: 250 mm, one 6 mm hole.</summary>
internal static class Spread
{
    private static readonly GapProblem Nominal = Rows.OneHole(250, 6);

    public static IEnumerable<string> Table()
    {
        yield return "| 250 mm, one 6 mm hole, with | outcome | lit [ms] | joint opens [ms] | peak grain surface [K] | short of ignition [K] |";
        yield return "|---|---|---|---|---|---|";
        yield return Row("nothing changed", Nominal);
        foreach (double g in new[] { 0.10, 0.30 })
            yield return Row($"fragment mass {g:F2} g", Source(s => s with { FragmentMass = Mass.FromGrams(g) }));
        foreach (double ms in new[] { 15.0, 40 })
            yield return Row($"fragment burn time {ms:F0} ms", Source(s => s with { FragmentBurnTime = Duration.FromMilliseconds(ms) }));
        foreach (double f in new[] { 0.55, 0.70 })
            yield return Row($"gas mass fraction {f:F2}", Source(s => s with { Products = s.Products with { GasMassFraction = f } }));
        foreach (double k in new[] { 723.0, 823 })
            yield return Row($"ignition temperature {k:F0} K", Grain(g => g with { IgnitionTemperature = Temperature.FromKelvins(k) }));
        foreach (double k in new[] { 0.15, 0.70 })
            yield return Row($"grain conductivity {k:F2} W/(m K)", Grain(g => g with { Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(k) }));
        foreach (double e in new[] { 0.03, 0.60 })
            yield return Row($"particle efficiency {e:F2}", Change(d => d with { Closures = d.Closures with { ParticleEfficiency = e } }));
        foreach (double n in new[] { 10.0, 30, 40, 60 })
            yield return Row($"joint {n:F0} N", Joint(Nominal, n));
        yield return Row("joint 60 N, particle efficiency 0.60", Joint(Change(d => d with { Closures = d.Closures with { ParticleEfficiency = 0.6 } }), 60));
    }

    private static GapProblem Change(Func<GapDesign, GapDesign> change) => Nominal with { Design = change(Nominal.Design) };

    private static GapProblem Source(Func<BurnThroughSource, BurnThroughSource> change) => Change(d => d with { Source = change(StartingGaps.Booster) });

    private static GapProblem Grain(Func<UpperGrain, UpperGrain> change) => Change(d => d with { Grain = change(d.Grain) });

    private static GapProblem Joint(GapProblem problem, double newtons)
    {
        FrictionJoint joint = problem.Design.Joint.Coupler with { BreakawayForce = Force.FromNewtons(newtons), SlidingForce = Force.FromNewtons(0.8 * newtons) };
        return problem with { Design = problem.Design with { Joint = joint } };
    }

    private static string Row(string change, GapProblem problem)
    {
        GapRun run = problem.Solve();
        double ignition = problem.Design.Grain.IgnitionTemperature.Kelvins, peak = run.PeakGrainSurface.Kelvins;
        string shortBy = run.Outcome.IsLit ? "-" : $"{ignition - peak:F0}";
        return $"| {change} | {Rows.Say(run.Outcome)} | {Rows.Time(run, GapEventKind.Lit)} | {Rows.Time(run, GapEventKind.JointOpens)} | {peak:F0} | {shortBy} |";
    }
}
