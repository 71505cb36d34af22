using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>What the resolved model takes beyond one motor in one bore: other sources, stepped bores, vents in several places.</summary>
public class ResolvedScopeTests
{
    private static readonly GapModel.OneDimensional Coarse = new() { Cells = 60 };
    private static readonly GapProblem Held = Bench.Gap.With(d => d with { Joint = Bench.Joint(2000) }) with { Horizon = Duration.FromMilliseconds(40) };

    [Fact]
    public void Fragments_burn_as_in_the_lumped_chamber_and_the_ledger_stays_exact()
    {
        GapProblem gap = Held.With(d => d with { Source = Fragments(0.24) });
        GapRun lumped = gap.Solve(), resolved = gap.Solve(Coarse);

        // The chamber is choked for most of the burning, so it hardly hears the tube: half a per cent is left for what it hears later.
        Assert.InRange(resolved.TimeOf(GapEventKind.SourceEnded)!.Value / lumped.TimeOf(GapEventKind.SourceEnded)!.Value - 1, -5e-3, 5e-3);
        Assert.InRange(resolved.Ledger.Burnt.Grams / 0.2 - 1, -1e-12, 1e-12);
        Closes(resolved);
    }

    [Fact]
    public void Fragments_at_a_rate_without_pressure_burn_out_after_half_their_thickness()
    {
        GapRun run = Held.With(d => d with { Source = Fragments(0) }).Solve(Coarse);
        Assert.Equal(0.8 / 2 / 15 * 1e3, run.TimeOf(GapEventKind.SourceEnded)!.Value.Milliseconds, 1e-9);
    }

    [Fact]
    public void A_table_gives_its_mass_and_enthalpy_and_the_gap_its_pressure()
    {
        GapSource.Tabulated feed = Held.Design.Fed([0.002, 0.004, 0.0041, 0.02], [0.01, 0.03, 0.005, 0.002], [1900, 1800, 1700, 1500]);
        GapProblem gap = Held.With(d => d with { Source = feed });
        GapRun run = gap.Solve(Coarse), lumped = gap.Solve();
        Assert.InRange(run.Ledger.Burnt / feed.TotalMass - 1, -1e-12, 1e-12);
        Assert.Equal(20, run.TimeOf(GapEventKind.SourceEnded)!.Value.Milliseconds, 1e-9);
        Assert.Equal(101325, run.At(Duration.FromMilliseconds(1.9)).GapPressure.Pascals, 1e-3);
        Closes(run);

        // Waves of a feed that jumps within an acoustic time lie above the common pressure, by what such a jump may reflect: less than its half.
        Assert.InRange(run.PeakGaugePressure / lumped.PeakGaugePressure, 0.9, 1.5);
    }

    /// <summary>A step may lie within the first cell, as of a ring in the booster's end: cells are as wide as their volume asks.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_closed_stepped_tube_has_the_pressure_of_its_energy(bool ring)
    {
        GapProblem gap = Bench.Adiabatic.With(d => d with { Tube = ring ? Ringed(d.Tube) : Stepped(d.Tube), Vents = [], Joint = Bench.Joint(2000) }) with
        { Horizon = Duration.FromMilliseconds(60) };
        GapRun run = gap.Solve(Coarse);
        double cp = gap.Surroundings.Gas.HeatCapacityAtConstantPressure.JoulesPerKilogramKelvin;
        double chamber = gap.Motor().ChamberVolume.CubicMeters, air = gap.Design.Tube.Volume.CubicMeters + gap.Design.Grain.RecessVolume.CubicMeters;
        double burnt = gap.Motor().Web.Mass.Kilograms * cp * gap.Motor().FlameTemperature.Kelvins;
        double expected = (gap.Motor().ChamberPressure.Pascals * chamber + 101325 * air + 0.4 * burnt) / (chamber + air);

        // What still sloshes 35 ms after the source ended, as in the tube of one bore.
        Assert.InRange(run.At(run.End).GapPressure.Pascals / expected - 1, -1e-3, 1e-3);
    }

    [Fact]
    public void A_stepped_bore_closes_its_ledgers_while_the_joint_slides_and_the_walls_cool()
    {
        GapRun run = Bench.Gap.With(d => d with { Tube = Stepped(d.Tube) }).Solve(Coarse);
        Assert.NotNull(run.TimeOf(GapEventKind.JointOpens));
        Closes(run);
    }

    [Fact]
    public void Steps_of_the_same_bore_change_nothing()
    {
        GapRun plain = Held.Solve(Coarse), stepped = Held.With(d => d with { Tube = d.Tube with { Steps = [Step(60, 18), Step(130, 18)] } }).Solve(Coarse);
        Assert.InRange(stepped.PeakGaugePressure / plain.PeakGaugePressure - 1, -1e-9, 1e-9);
        Assert.InRange(stepped.PeakGrainSurface.Kelvins / plain.PeakGrainSurface.Kelvins - 1, -1e-9, 1e-9);
    }

    [Fact]
    public void A_step_of_a_stepped_gap_with_fragments_allocates_nothing()
    {
        GapProblem gap = Bench.Gap.With(d => d with { Tube = Stepped(d.Tube), Source = Fragments(0.24) });
        Assert.Equal(0, ResolvedSteps.Allocated(gap, Coarse, JointPhase.Slides, acceleration: 100));
    }

    [Fact]
    public void A_vent_below_the_last_stirs_by_its_share_and_a_long_opening_counts_whole()
    {
        // One opening in two halves at two stations; then one as long as both. The ledger closes, and less comes to the nozzle than through holes there.
        GapProblem near = Held.With(d => d with { Vents = [Bench.Hole(d.Tube, 5, 4)] });
        GapProblem apart = Held.With(d => d with { Vents = [Bench.Hole(d.Tube, 5, 2), Bench.Hole(d.Tube, 5, 2) with { Station = Length.FromMillimeters(200) }] });
        GapProblem along = Held.With(d => d with { Vents = [Bench.Hole(d.Tube, 5, 4) with { Station = Length.FromMillimeters(220), AxialLength = Length.FromMillimeters(45) }] });
        GapRun[] runs = [near.Solve(Coarse), apart.Solve(Coarse), along.Solve(Coarse)];
        Assert.All(runs, Closes);
        Assert.True(runs[1].PeakGrainSurface < runs[0].PeakGrainSurface);
        Assert.True(runs[2].PeakGrainSurface < runs[0].PeakGrainSurface);
    }

    [Fact]
    public void A_hole_in_the_wake_draws_as_the_pressure_behind_it_asks()
    {
        Vent hole = Bench.Hole(Bench.Tube(250), 6);
        GapProblem still = Held.With(d => d with { Vents = [hole] }), fast = Held.With(d => d with { Vents = [hole with { To = VentTarget.Outside(-0.5) }] }) with { DynamicPressure = Pressure.FromKilopascals(20) };
        GapRun a = still.Solve(Coarse), b = fast.Solve(Coarse);
        Assert.True(b.PeakGaugePressure < a.PeakGaugePressure);
        Closes(b);
    }

    private static void Closes(GapRun run)
    {
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }

    private static GuideTube Ringed(GuideTube tube) => tube with
    {
        Bore = Length.FromMillimeters(12),
        Steps = [new BoreStep { Station = Length.FromMillimeters(3), Bore = tube.Bore }],
    };

    private static GuideTube Stepped(GuideTube tube) => tube with { Steps = [Step(80, 24), Step(173, 15)] };

    private static BoreStep Step(double station, double bore) => new() { Station = Length.FromMillimeters(station), Bore = Length.FromMillimeters(bore) };

    private static GapSource.Booster Fragments(double exponent) => Bench.Gap.Motor() with { Web = Bench.Plates(0.2, 0.8, 15, exponent) };
}
