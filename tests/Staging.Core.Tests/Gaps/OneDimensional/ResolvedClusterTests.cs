using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>Several motors that feed one resolved gap.</summary>
public class ResolvedClusterTests
{
    private static readonly GapModel.OneDimensional Coarse = new() { Cells = 60 };
    private static readonly GapProblem Held = Bench.Gap.With(d => d with { Joint = Bench.Joint(2000) }) with { Horizon = Duration.FromMilliseconds(40) };

    [Fact]
    public void Two_half_motors_are_one()
    {
        GapSource.Booster whole = Bench.Gap.Motor(), half = whole with
        {
            ChamberVolume = 0.5 * whole.ChamberVolume,
            OpeningDiameter = Math.Sqrt(0.5) * whole.OpeningDiameter,
            NozzleThroatDiameter = Math.Sqrt(0.5) * whole.NozzleThroatDiameter,
            Web = whole.Web with { Mass = 0.5 * whole.Web.Mass },
        };
        GapRun one = Bench.Gap.Solve(Coarse), two = Bench.Gap.With(d => d with { Source = Bench.Pair(half, half, 0) }).Solve(Coarse);

        // The pressure at the end is found to 1e-11 of the chamber's, some thousand times.
        Assert.Equal(one.Statistics.AcceptedSteps, two.Statistics.AcceptedSteps);
        Assert.InRange(two.PeakGaugePressure / one.PeakGaugePressure - 1, -1e-8, 1e-8);
        Assert.InRange(two.TimeOf(GapEventKind.JointOpens)!.Value / one.TimeOf(GapEventKind.JointOpens)!.Value - 1, -1e-8, 1e-8);
        Assert.InRange(two.PeakGrainSurface.Kelvins / one.PeakGrainSurface.Kelvins - 1, -1e-8, 1e-8);
    }

    [Fact]
    public void A_motor_that_burns_through_after_the_horizon_does_nothing()
    {
        GapRun one = Held.Solve(Coarse), two = Held.With(d => d with { Source = Bench.Pair(d.Motor(), d.Motor(), 1) }).Solve(Coarse);
        Assert.Equal(one.PeakGaugePressure, two.PeakGaugePressure);
        Assert.Equal(one.PeakGrainSurface, two.PeakGrainSurface);
        Assert.Null(two.TimeOf(GapEventKind.SourceEnded));
    }

    [Fact]
    public void A_late_motor_blows_back_into_the_first_and_raises_the_gap()
    {
        GapRun late = Held.With(d => d with { Source = Bench.Pair(d.Motor(), d.Motor(), 0.008) }).Solve(Coarse), one = Held.Solve(Coarse);
        Assert.InRange(late.At(Duration.FromMilliseconds(7.9)).GapPressure / one.At(Duration.FromMilliseconds(7.9)).GapPressure - 1, -1e-12, 1e-12);
        Assert.True(late.At(Duration.FromMilliseconds(12)).GapPressure > one.At(Duration.FromMilliseconds(12)).GapPressure);
        Assert.Equal(33, late.TimeOf(GapEventKind.SourceEnded)!.Value.Milliseconds, 1e-9);
        Assert.InRange(late.Ledger.Burnt.Grams / 0.4 - 1, -1e-12, 1e-12);
        Closes(late);
    }

    [Fact]
    public void Plates_in_one_and_a_pulse_in_the_other_burn_to_the_last()
    {
        GapSource.Booster plates = Bench.Gap.Motor() with { Web = Bench.Plates(0.15, 0.8, 15, 0) };
        GapRun run = Held.With(d => d with { Source = Bench.Pair(d.Motor(), plates, 0.003) }).Solve(Coarse);
        Assert.Equal(3 + 0.8 / 2 / 15 * 1e3, run.TimeOf(GapEventKind.SourceEnded)!.Value.Milliseconds, 1e-9);
        Assert.InRange(run.Ledger.Burnt.Grams / 0.35 - 1, -1e-12, 1e-12);
        Closes(run);
    }

    [Fact]
    public void Motors_slow_against_the_acoustic_time_give_what_the_displacement_model_gives()
    {
        // As for one motor: openings and fragments over milliseconds against 0.3 ms for sound along 100 mm, no wall heat, a thin front; the second motor
        // 10 ms later. Left out is, after each blow, the time in which the dead end fills.
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Tube = Bench.Tube(100),
            Vents = [Bench.Hole(Bench.Tube(100), 5, 2)],
            Joint = Bench.Joint(2000),
            Source = Bench.Pair(d.Motor(), d.Motor() with { OpeningTime = Duration.FromMilliseconds(3) }, 0.010),
            MixingAndHeat = d.MixingAndHeat with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0, FrontThicknessInBores = 0.05 },
        }) with
        { Horizon = Duration.FromMilliseconds(24) };
        GapRun resolved = gap.Solve(new GapModel.OneDimensional { Cells = 100 }), displaced = gap.Solve();
        foreach (double t in (double[])[8, 9, 10, 12, 13, 14, 16, 18, 20, 22, 24])
        {
            double a = resolved.At(Duration.FromMilliseconds(t)).GapPressure.Pascals, b = displaced.At(Duration.FromMilliseconds(t)).GapPressure.Pascals;
            Assert.InRange(a / b - 1, -0.01, 0.01);
        }
    }

    [Theory]
    [InlineData(40)]
    [InlineData(80)]
    [InlineData(200)]
    public void Openings_far_wider_than_the_bore_are_as_good_as_none_between_the_chambers(double millimetres)
    {
        // Two chambers joined by more than the bore stand at one pressure: how much more no longer matters, nor the step. The lumped models have no waves.
        GapProblem Wide(double opening) => Held.With(d => d with
        {
            Source = Bench.Pair(
                d.Motor() with { OpeningDiameter = Length.FromMillimeters(opening), ChamberPressure = Pressure.FromMegapascals(2) },
                d.Motor() with { OpeningDiameter = Length.FromMillimeters(opening) },
                0.008),
        });
        GapRun run = Wide(millimetres).Solve(Coarse), fine = Wide(millimetres).Solve(Coarse with { CourantNumber = 0.1 }), lumped = Wide(millimetres).Solve();
        Assert.InRange(run.PeakGaugePressure / fine.PeakGaugePressure - 1, -0.01, 0.01);
        Assert.InRange(run.PeakGaugePressure / lumped.PeakGaugePressure - 1, -0.01, 0.01);
        Assert.InRange(run.TimeOf(GapEventKind.Lit)!.Value / fine.TimeOf(GapEventKind.Lit)!.Value - 1, -0.01, 0.01);
        Closes(run);
    }

    private static void Closes(GapRun run)
    {
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }
}
