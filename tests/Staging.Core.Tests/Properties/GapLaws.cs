using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using Staging.Core.Tests.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Properties;

/// <summary>Random legal gaps: what must hold for every one of them.</summary>
public class GapLaws
{
    [Property(Arbitrary = [typeof(LegalGap)], MaxTest = 60)]
    public void Ledgers_close_and_every_number_is_finite(GapProblem gap)
    {
        GapRun run = gap.Solve();
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
        Assert.True(double.IsFinite(run.PeakGaugePressure.Pascals) && double.IsFinite(run.PeakGrainSurface.Kelvins));
        Assert.IsNotType<GapOutcome.NotSolved>(run.Outcome);
    }

    [Property(Arbitrary = [typeof(LegalGap)], MaxTest = 40)]
    public void More_vent_area_never_raises_the_peak_pressure(GapProblem gap)
    {
        GapProblem held = Held(gap);
        Pressure peak = held.Solve(options: SolverOptions.Default).PeakGaugePressure;
        GapProblem narrower = held.With(d => d with { Vents = [d.Vents[0] with { Holes = d.Vents[0].Holes with { Diameter = 0.9 * d.Vents[0].Holes.Diameter } }] });
        Assert.True(peak.Pascals <= narrower.Solve(options: SolverOptions.Default).PeakGaugePressure.Pascals * (1 + 1e-6) + 1);
    }

    [Property(Arbitrary = [typeof(LegalGap)], MaxTest = 40)]
    public void A_leak_past_the_joint_never_raises_the_peak_pressure(GapProblem gap)
    {
        GapProblem held = Held(gap);
        double tight = held.Solve(options: SolverOptions.Default).PeakGaugePressure.Pascals, most = tight;
        foreach (double leak in (ReadOnlySpan<double>)[2, 20, 200])
        {
            GapProblem leaky = held.With(d => d with { Joint = d.Joint.Coupler with { LeakArea = Area.FromSquareMillimeters(leak) } });
            double peak = leaky.Solve(options: SolverOptions.Default).PeakGaugePressure.Pascals;
            Assert.True(peak <= most * (1 + 1e-6) + 1, $"{leak} mm2: {peak:F1} Pa after {most:F1} Pa");
            most = peak;
        }
    }

    [Property(Arbitrary = [typeof(LegalGap)], MaxTest = 40)]
    public void A_stronger_joint_never_opens_earlier(GapProblem gap)
    {
        Duration opens = gap.Solve(options: SolverOptions.Default).TimeOf(GapEventKind.JointOpens) ?? Duration.FromSeconds(1e3);
        GapProblem stronger = gap.With(d => d with { Joint = d.Joint.Coupler with { BreakawayForce = 1.3 * d.Joint.Coupler.BreakawayForce, SlidingForce = 1.3 * d.Joint.Coupler.SlidingForce } });
        Duration later = stronger.Solve(options: SolverOptions.Default).TimeOf(GapEventKind.JointOpens) ?? Duration.FromSeconds(1e3);
        Assert.True(later.Seconds >= opens.Seconds - 1e-7);
    }

    [Property(Arbitrary = [typeof(LegalGap)], MaxTest = 40)]
    public void A_lit_grain_is_at_its_ignition_temperature_and_was_colder_before(GapProblem gap)
    {
        foreach (double kelvins in (ReadOnlySpan<double>)[730, 780])
        {
            GapRun run = Held(gap).With(d => d with { Grain = d.Grain with { IgnitionTemperature = Temperature.FromKelvins(kelvins) } }).Solve();
            if (run.TimeOf(GapEventKind.Lit) is not { } lit)
                continue;
            // Between the samples of the run the surface is interpolated; it rises by less than a kelvin from one to the next near ignition.
            Assert.Equal(kelvins, run.At(lit).GrainSurface.Kelvins, 0.5);
            for (double share = 0.05; share < 1; share += 0.05)
                Assert.True(run.At(share * lit).GrainSurface.Kelvins < kelvins);
        }
    }

    [Property(Arbitrary = [typeof(LegalGap)], MaxTest = 30)]
    public void Scaling_pressures_masses_and_forces_together_scales_nothing_in_time(GapProblem gap)
    {
        GapProblem one = Ideal(gap);
        const double k = 1.7;
        GapProblem scaled = one.With(d => d with
        {
            Source = d.Motor() with { ChamberPressure = k * d.Motor().ChamberPressure, Web = d.Web() with { Mass = k * d.Web().Mass } },
            Joint = d.Joint.Coupler with { BreakawayForce = k * d.Joint.Coupler.BreakawayForce, SlidingForce = k * d.Joint.Coupler.SlidingForce },
        }) with
        {
            Bodies = one.Bodies with { MassAhead = k * one.Bodies.MassAhead, MassBehind = k * one.Bodies.MassBehind },
            Surroundings = one.Surroundings with { Pressure = k * one.Surroundings.Pressure },
        };
        GapRun a = one.Solve(options: SolverOptions.Default), b = scaled.Solve(options: SolverOptions.Default);
        Assert.InRange(b.PeakGaugePressure.Pascals / a.PeakGaugePressure.Pascals / k - 1, -1e-5, 1e-5);
        Same(a, b, GapEventKind.JointMoves);
        Same(a, b, GapEventKind.FrontAtLastVent);
    }

    private static void Same(GapRun a, GapRun b, GapEventKind kind)
    {
        if (a.TimeOf(kind) is { } t && b.TimeOf(kind) is { } u)
            Assert.InRange(u.Seconds / t.Seconds - 1, -1e-4, 1e-4);
    }

    /// <summary>A joint that does not move: the gas alone.</summary>
    private static GapProblem Held(GapProblem gap) => gap.With(d => d with { Joint = Bench.Joint(2000) });

    /// <summary>Without wall heat, which does not scale with density.</summary>
    private static GapProblem Ideal(GapProblem gap) =>
        gap.With(d => d with { MixingAndHeat = d.MixingAndHeat with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0 } });
}

/// <summary>Random gaps within the sizes of small model rockets.</summary>
public static class LegalGap
{
    public static Arbitrary<GapProblem> Gap() => (
        from length in Range(40, 600)
        from bore in Range(13, 30)
        from holes in Gen.Choose(1, 6)
        from diameter in Range(1.5, 7)
        from grams in Range(0.05, 0.5)
        from burn in Range(8, 45)
        from chamber in Range(300, 1500)
        from hold in Range(2, 80)
        from engagement in Range(5, 40)
        from gas in Range(0.45, 0.7)
        select Build(length, bore, holes, diameter, grams, burn, chamber, hold, engagement, gas)).ToArbitrary();

    private static Gen<double> Range(double low, double high) =>
        Gen.Choose(0, int.MaxValue).Select(n => low + (high - low) * n / int.MaxValue);

    private static GapProblem Build(
        double length, double bore, int holes, double diameter, double grams, double burn, double chamber, double hold, double engagement, double gas)
    {
        var tube = new GuideTube { Bore = Length.FromMillimeters(bore), Length = Length.FromMillimeters(length) };
        return Bench.Gap.With(d => d with
        {
            Tube = tube,
            Vents = [Bench.Hole(tube, diameter, Math.Min(holes, (int)(Math.PI * bore / diameter)))],
            Source = d.Motor() with
            {
                Products = Bench.Powder(gas),
                Web = new WebBurn.OverTime { Mass = Mass.FromGrams(grams), Time = Duration.FromMilliseconds(burn) },
                ChamberPressure = Pressure.FromKilopascals(chamber),
            },
            Joint = Bench.Joint(hold, engagement),
        });
    }
}
