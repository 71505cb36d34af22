using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>The kinds of sources, and the limits in which one is another.</summary>
public class GapSourceTests
{
    private static readonly GapProblem Held = Bench.Gap.With(d => d with { Joint = Bench.Joint(2000) });

    [Fact]
    public void Fragments_at_a_rate_without_pressure_burn_out_after_half_their_thickness()
    {
        GapRun run = Held.With(d => d with { Source = Fragments(0.8, 15, 0) }).Solve();
        Assert.Equal(0.8 / 2 / 15 * 1e3, run.TimeOf(GapEventKind.SourceEnded)!.Value.Milliseconds, 1e-5);

        // All of them, but for what burns within the tolerance of the event: 1 ns in 27 ms.
        Assert.InRange(run.Ledger.Burnt.Grams / 0.2 - 1, -1e-7, 1e-7);
    }

    [Fact]
    public void Fragments_burn_faster_under_pressure_and_their_ledger_stays_exact()
    {
        GapRun steady = Held.With(d => d with { Source = Fragments(0.8, 15, 0) }).Solve(), pressed = Held.With(d => d with { Source = Fragments(0.8, 15, 0.24) }).Solve();
        Assert.True(pressed.TimeOf(GapEventKind.SourceEnded)!.Value < steady.TimeOf(GapEventKind.SourceEnded)!.Value);
        Assert.InRange(pressed.Ledger.Burnt.Grams / 0.2 - 1, -1e-7, 1e-7);
        Assert.InRange(pressed.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(pressed.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }

    [Fact]
    public void Burnt_share_is_the_integral_of_the_rate()
    {
        // The event is where 2/h times the integral of a (p/p0)^n is one: summed here by Simpson's rule from the recorded chamber pressure.
        GapRun run = Held.With(d => d with { Source = Fragments(0.6, 12.1, 0.24) }).Solve();
        double end = run.TimeOf(GapEventKind.SourceEnded)!.Value.Seconds, sum = 0;
        const int n = 20000;
        for (int i = 0; i <= n; i++)
        {
            double p = run.At(Duration.FromSeconds(end * i / n)).ChamberPressure.Pascals;
            sum += (i is 0 or n ? 1 : i % 2 == 1 ? 4 : 2) * Math.Pow(p / 101325, 0.24);
        }

        Assert.InRange(2 * 12.1e-3 / 0.6e-3 * sum * end / (3 * n) - 1, -1e-6, 1e-6);
    }

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
        GapRun one = Bench.Gap.Solve(options: SolverOptions.Default),
            two = Bench.Gap.With(d => d with { Source = Bench.Pair(half, half, 0) }).Solve(options: SolverOptions.Default);
        Assert.InRange(two.PeakGaugePressure / one.PeakGaugePressure - 1, -1e-7, 1e-7);
        Assert.InRange(two.TimeOf(GapEventKind.JointOpens)!.Value / one.TimeOf(GapEventKind.JointOpens)!.Value - 1, -1e-7, 1e-7);
        Assert.InRange(two.PeakGrainSurface.Kelvins / one.PeakGrainSurface.Kelvins - 1, -1e-7, 1e-7);
    }

    [Fact]
    public void A_motor_that_burns_through_after_the_horizon_does_nothing()
    {
        GapSource.Booster motor = Bench.Gap.Motor();
        GapRun one = Bench.Gap.Solve(), two = Bench.Gap.With(d => d with { Source = Bench.Pair(motor, motor, 1) }).Solve();
        Assert.InRange(two.PeakGaugePressure / one.PeakGaugePressure - 1, -1e-7, 1e-7);
    }

    [Fact]
    public void A_second_motor_that_is_late_blows_back_into_the_first_and_raises_the_gap()
    {
        GapSource.Booster motor = Bench.Gap.Motor();
        GapRun late = Held.With(d => d with { Source = Bench.Pair(motor, motor, 0.008) }).Solve(), one = Held.Solve();
        Assert.InRange(late.At(Duration.FromMilliseconds(7.9)).GapPressure / one.At(Duration.FromMilliseconds(7.9)).GapPressure - 1, -1e-7, 1e-7);
        Assert.True(late.At(Duration.FromMilliseconds(12)).GapPressure > one.At(Duration.FromMilliseconds(12)).GapPressure);
        Assert.Equal(33, late.TimeOf(GapEventKind.SourceEnded)!.Value.Milliseconds, 1e-9);
        Assert.InRange(late.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(late.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }

    [Fact]
    public void A_table_gives_its_mass_whatever_the_pressure_and_may_jump()
    {
        GapSource.Tabulated feed = Held.Design.Fed([0.002, 0.004, 0.0041, 0.02], [0.01, 0.03, 0.005, 0.002], [1900, 1800, 1700, 1500]);
        GapRun run = Held.With(d => d with { Source = feed }).Solve();
        Assert.InRange(run.Ledger.Burnt / feed.TotalMass - 1, -1e-12, 1e-12);
        Assert.Equal(20, run.TimeOf(GapEventKind.SourceEnded)!.Value.Milliseconds, 1e-9);
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
        Assert.Equal(101325, run.At(Duration.FromMilliseconds(1.9)).GapPressure.Pascals, 1e-3);
    }

    [Fact]
    public void The_published_burn_rates_are_those_of_the_tables()
    {
        // r = a p^n in cm/s with p in atm, worked out by hand from the two laws: 2.10274 and 2.50916 cm/s at 10 atm.
        Pressure ten = Pressure.FromAtmospheres(10);
        Assert.Equal(21.0274, BurnRateLaw.Shidlovskiy.At(ten).MillimetersPerSecond, 1e-4);
        Assert.Equal(25.0916, BurnRateLaw.BelyaevMaznev.At(ten).MillimetersPerSecond, 1e-4);
    }

    [Fact]
    public void A_cluster_of_different_products_or_of_too_few_motors_is_refused()
    {
        GapSource.Booster motor = Bench.Gap.Motor();
        Assert.Contains(Bench.Gap.With(d => d with { Source = Bench.Pair(motor, motor with { Products = Bench.Powder(0.5) }, 0) }).Check(), f => f.Code == "GAP029" && f.Path == "Source.Motors[1]");
        Assert.Throws<ArgumentException>(() => new GapSource.Cluster { Motors = [motor] });
    }

    [Fact]
    public void A_chamber_has_some_depth_behind_its_holes()
    {
        GapSource.Booster thin = Bench.Gap.Motor() with { ChamberVolume = Volume.FromCubicMillimeters(10), NozzleThroatDiameter = Length.FromMillimeters(12) };
        ModelFinding found = Assert.Single(Bench.Gap.With(d => d with { Source = thin }).Check(), f => f.Code == "GAP037");
        Assert.Equal((FindingSeverity.Error, "Source.ChamberVolume"), (found.Severity, found.Path));
        Assert.Contains("micrometres deep; less than 100 is no space", found.Message, StringComparison.Ordinal);
        Assert.Equal("Source.Motors[1].ChamberVolume",
            Assert.Single(Bench.Gap.With(d => d with { Source = Bench.Pair(Bench.Gap.Motor(), thin, 0.01) }).Check(), f => f.Code == "GAP037").Path);
        GapSource.EndBurner wide = StartingGaps.Booster with { BurntLength = Length.FromMillimeters(3), NozzleThroatDiameter = Length.FromMillimeters(100) };
        Assert.Equal("Source.BurntLength", Assert.Single(StartingGaps.Bore18mm.With(d => d with { Source = wide }).Check(), f => f.Code == "GAP037").Path);
    }

    /// <summary>What flows in raises the pressure, or the gap has no answer: by what both gases are, and how hot.</summary>
    [Theory]
    [InlineData(1.4, 1.4, 1900, true)]
    [InlineData(1.6, 1.4, 1900, false)]
    [InlineData(1.25, 1.4, 3500, true)]
    [InlineData(1.4, 1.2, 1900, false)]
    [InlineData(1.25, 1.05, 2500, false)]
    [InlineData(5.0 / 3, 1.4, 300, true)]
    [InlineData(5.0 / 3, 1.4, 1900, false)]
    public void Gas_from_outside_does_not_lower_the_pressure_of_products(double products, double outside, double kelvins, bool accepted)
    {
        GapProblem gap = (Bench.Gap with
        {
            Surroundings = Bench.Gap.Surroundings with { Gas = PerfectGas.FromMolarMass("outside", MolarMass.FromGramsPerMole(40), outside, Bench.Invented) },
        }).With(d => d with
        {
            Source = GapSource.Tabulated.FromColumns(
                Bench.Powder(1) with { Gas = PerfectGas.FromMolarMass("gas", MolarMass.FromGramsPerMole(35), products, Bench.Invented) },
                [0, 5e-3, 20e-3], [1e-3, 4e-3, 0], [300, kelvins, 300], Bench.Invented),
        });
        ImmutableArray<ModelFinding> found = gap.Check();
        Assert.Equal(!accepted, found.Any(f => f is { Code: "GAP038", Severity: FindingSeverity.Error, Path: "Source.Products" }));
        if (accepted)
            Assert.Null(gap.Solve().Failure);
    }

    /// <summary>The other way round: cold products of a low ratio would cool the air that they flow into by more than they add.</summary>
    [Theory]
    [InlineData(1.03, 250, false)]
    [InlineData(1.03, 270, true)]
    [InlineData(1.25, 250, true)]
    public void Products_do_not_lower_the_pressure_of_air(double products, double kelvins, bool accepted)
    {
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Source = GapSource.Tabulated.FromColumns(
                Bench.Powder(1) with { Gas = PerfectGas.FromMolarMass("gas", MolarMass.FromGramsPerMole(35), products, Bench.Invented) },
                [0, 5e-3, 20e-3], [1e-4, 4e-4, 0], [1000, kelvins, 1000], Bench.Invented),
        });
        Assert.Equal(!accepted, gap.Check().Any(f => f is { Code: "GAP038", Severity: FindingSeverity.Error, Path: "Source.Products" }));
        if (accepted)
            Assert.Null(gap.Solve().Failure);
    }

    /// <summary>A chamber that blows down and has nothing to burn has ended as a source when it begins, in either model.</summary>
    [Fact]
    public void A_source_without_anything_to_burn_ends_at_once()
    {
        GapProblem gap = Held.With(d => d with { Source = d.Motor() with { Web = Bench.Plates(0, 0.8, 15, 0.24) } });
        foreach (GapModel model in (GapModel[])[new GapModel.TwoZone(), new GapModel.OneDimensional { Cells = 60 }])
            Assert.Equal(Duration.Zero, gap.Solve(model).TimeOf(GapEventKind.SourceEnded));
    }

    /// <summary>A delay counts from the first burn-through, which is time zero.</summary>
    [Fact]
    public void A_source_without_a_motor_at_time_zero_gets_a_finding()
    {
        GapSource.Booster motor = Bench.Gap.Motor(), later = motor with { Delay = Duration.FromMilliseconds(30) };
        Assert.DoesNotContain(Bench.Gap.With(d => d with { Source = Bench.Pair(motor, motor, 0.03) }).Check(), f => f.Code == "GAP036");
        ModelFinding single = Assert.Single(Bench.Gap.With(d => d with { Source = later }).Check(), f => f.Code == "GAP036");
        Assert.Equal((FindingSeverity.Warning, "Source.Delay"), (single.Severity, single.Path));
        Assert.StartsWith("Nothing comes for 30 ms: time zero is when the first motor burns through", single.Message, StringComparison.Ordinal);
        Assert.Equal("Source.Motors", Assert.Single(Bench.Gap.With(d => d with { Source = Bench.Pair(later, motor, 0.04) }).Check(), f => f.Code == "GAP036").Path);
    }

    [Theory]
    [InlineData(new[] { 0.0 }, new[] { 1.0 }, new[] { 300.0 })]
    [InlineData(new[] { 0.0, 0.0 }, new[] { 1.0, 1.0 }, new[] { 300.0, 300.0 })]
    [InlineData(new[] { 0.0, 1.0 }, new[] { 1.0, -1.0 }, new[] { 300.0, 300.0 })]
    [InlineData(new[] { 0.0, 1.0 }, new[] { 1.0, double.NaN }, new[] { 300.0, 300.0 })]
    [InlineData(new[] { 0.0, 1.0 }, new[] { 1.0, 1.0 }, new[] { 300.0 })]
    public void Bad_tables_are_refused(double[] time, double[] flow, double[] temperature) =>
        Assert.Throws<ArgumentException>(() => Bench.Design.Fed(time, flow, temperature));

    [Fact]
    public void New_products_reach_every_motor_of_a_cluster()
    {
        DustyGas lean = Bench.Powder(0.5);
        GapSource pair = Bench.Pair(Bench.Gap.Motor(), Bench.Gap.Motor(), 0.001);
        GapSource changed = pair with { Products = lean };
        Assert.Equal(Bench.Pair(Bench.Gap.Motor() with { Products = lean }, Bench.Gap.Motor() with { Products = lean }, 0.001), changed);
    }

    private static GapSource.Booster Fragments(double millimetres, double rate, double exponent) =>
        Bench.Gap.Motor() with { Web = Bench.Plates(0.2, millimetres, rate, exponent) };
}
