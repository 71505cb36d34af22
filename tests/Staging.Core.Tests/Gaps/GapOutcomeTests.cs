using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>Every outcome comes about, with numbers that say why.</summary>
public class GapOutcomeTests
{
    /// <summary>The bench gap with a joint that holds: it lights.</summary>
    private static readonly GapProblem Holding = Bench.Gap.With(d => d with { Vents = [Bench.Hole(d.Tube, 5, 4)], Joint = Bench.Joint(60) });

    [Fact]
    public void A_reachgap_with_vents_and_a_joint_that_holds_lights()
    {
        GapRun run = Holding.Solve();
        var lit = Assert.IsType<GapOutcome.Lit>(run.Outcome);
        Assert.True(lit.SurfaceMargin.Kelvins >= 0);
        Assert.True(run.TimeOf(GapEventKind.FrontAtLastVent) < run.TimeOf(GapEventKind.ProductsAtNozzle));
        Assert.True(run.TimeOf(GapEventKind.ProductsAtNozzle) < lit.Time);
        Assert.Equal(773, run.At(lit.Time).GrainSurface.Kelvins, 0.5);
    }

    [Fact]
    public void The_end_of_the_fragments_is_noted_though_the_gap_is_spent_by_then()
    {
        GapRun run = Holding.Solve();
        Assert.Equal(0.025, run.TimeOf(GapEventKind.SourceEnded)!.Value.Seconds, 1e-12);
        Assert.True(run.TimeOf(GapEventKind.Spent) >= run.TimeOf(GapEventKind.SourceEnded));
    }

    [Fact]
    public void A_closed_gap_is_pushed_apart()
    {
        GapRun run = Bench.Gap.With(d => d with { Vents = [] }).Solve();
        var apart = Assert.IsType<GapOutcome.PushedApart>(run.Outcome);
        Assert.Equal(run.TimeOf(GapEventKind.JointOpens), apart.Time);
        Assert.True(apart.FrontRemaining.Millimeters > 10, "the air had nowhere to go");
        Assert.Equal(20, run.At(run.End).JointTravel.Millimeters, 1e-5);
    }

    [Fact]
    public void A_vent_far_from_the_nozzle_lets_the_products_away()
    {
        GapRun run = Holding.With(d => d with { Vents = [Bench.Hole(Bench.Tube(150), 6, 2)] }).Solve();
        var away = Assert.IsType<GapOutcome.VentedAway>(run.Outcome);
        Assert.InRange(away.ProductsAtNozzle, 0, 0.5);
        Assert.NotNull(run.TimeOf(GapEventKind.FrontAtLastVent));
    }

    [Fact]
    public void A_grain_that_needs_too_much_stays_cool()
    {
        GapRun run = Holding.With(d => d with { Grain = d.Grain with { IgnitionTemperature = Temperature.FromKelvins(1200) } }).Solve();
        var cool = Assert.IsType<GapOutcome.TooCool>(run.Outcome);
        double hottest = Enumerable.Range(0, 2001).Max(i => run.At(run.End * (i / 2000.0)).GrainSurface.Kelvins);
        Assert.Equal(hottest, cool.PeakSurface.Kelvins, 0.5);
        Assert.Equal(1200 - hottest, cool.SurfaceShortfall.Kelvins, 0.5);
    }

    [Fact]
    public void A_weak_source_does_not_reach_the_end_of_a_long_gap()
    {
        GapRun run = Holding.With(d => d with
        {
            Tube = Bench.Tube(900),
            Vents = [Bench.Hole(Bench.Tube(900), 6)],
            Source = d.Motor() with { Web = d.Web() with { Mass = Mass.FromGrams(0.05) } },
        }).Solve();
        var reach = Assert.IsType<GapOutcome.DidNotReach>(run.Outcome);
        Assert.InRange(reach.FrontRemaining.Millimeters, 100, 880);
    }

    [Fact]
    public void A_run_that_uses_up_its_steps_says_so_and_carries_no_NaN()
    {
        GapRun run = Bench.Gap.Solve(options: new Staging.Core.Solving.SolverOptions { MaxSteps = 20 });
        var failed = Assert.IsType<GapOutcome.NotSolved>(run.Outcome);
        Assert.Equal(Staging.Core.Solving.SolverFailureKind.TooManySteps, failed.Failure.Kind);
        Assert.True(double.IsFinite(run.PeakGaugePressure.Pascals));
    }

    [Fact]
    public void Match_calls_the_case_that_holds() =>
        Assert.Equal("lit", Holding.Solve().Outcome.Match(_ => "lit", _ => "apart", _ => "away", _ => "cool", _ => "short", _ => "failed"));

    [Fact]
    public void A_joint_without_strength_slides_at_once()
    {
        GapProblem weak = Bench.Gap.With(d => d with { Joint = Bench.Joint(0) });
        GapRun run = (weak with { Bodies = weak.Bodies with { ClosingAcceleration = Acceleration.FromMetersPerSecondSquared(-10) } }).Solve();
        Assert.Equal(0, run.TimeOf(GapEventKind.JointMoves)!.Value.Seconds);
    }

    [Fact]
    public void Columns_end_at_the_last_moment_and_hold_both_ends()
    {
        GapRun run = Holding.Solve();
        GapColumns columns = run.Sample(Duration.FromMilliseconds(0.3));
        Assert.Equal(0, columns.Time_s.Span[0]);
        Assert.Equal(run.End.Seconds, columns.Time_s.Span[^1]);
        for (int i = 1; i < columns.Time_s.Length; i++)
            Assert.True(columns.Time_s.Span[i] > columns.Time_s.Span[i - 1]);
        GapSnapshot middle = run.At(Duration.FromSeconds(columns.Time_s.Span[20]));
        (GapChannel Channel, double Value, string Unit)[] expected =
        [
            (GapChannel.GapPressure, middle.GapPressure.Pascals, "Pa"),
            (GapChannel.ChamberPressure, middle.ChamberPressure.Pascals, "Pa"),
            (GapChannel.Front, middle.Front.Meters, "m"),
            (GapChannel.HotTemperature, middle.HotTemperature.Kelvins, "K"),
            (GapChannel.NozzleTemperature, middle.NozzleTemperature.Kelvins, "K"),
            (GapChannel.ProductsAtNozzle, middle.ProductsAtNozzle, "-"),
            (GapChannel.GrainSurface, middle.GrainSurface.Kelvins, "K"),
            (GapChannel.JointTravel, middle.JointTravel.Meters, "m"),
            (GapChannel.Convection, middle.Convection.WattsPerSquareMeter, "W/m2"),
            (GapChannel.Radiation, middle.Radiation.WattsPerSquareMeter, "W/m2"),
            (GapChannel.Particles, middle.Particles.WattsPerSquareMeter, "W/m2"),
        ];
        Assert.Equal(Enum.GetValues<GapChannel>(), expected.Select(e => e.Channel));
        Assert.All(expected, e =>
        {
            Assert.Equal(columns.Time_s.Length, columns[e.Channel].Length);
            Assert.Equal(e.Value, columns[e.Channel].Span[20]);
            Assert.Equal(e.Unit, GapColumns.UnitOf(e.Channel));
        });
        GapChannel[] rising = [GapChannel.ProductsAtNozzle, GapChannel.Convection, GapChannel.Radiation, GapChannel.Particles];
        Assert.All(rising, c => Assert.True(columns[c].ToArray().Max() > 0));
        using var csv = new StringWriter();
        columns.WriteCsv(csv);
        string[] lines = csv.ToString().Split('\n');
        Assert.StartsWith("time [s],gap pressure [Pa],chamber pressure [Pa],front [m],", lines[0], StringComparison.Ordinal);
        Assert.Equal(columns.Time_s.Length + 2, lines.Length);
        Assert.Equal(expected.OrderBy(e => e.Channel).Select(e => e.Value).Prepend(columns.Time_s.Span[20]), lines[21].Split(',').Select(Number));
        Assert.Throws<ArgumentOutOfRangeException>(() => columns[(GapChannel)11]);
        Assert.Throws<ArgumentOutOfRangeException>(() => GapColumns.UnitOf((GapChannel)(-1)));
    }

    [Fact]
    public void Looking_outside_the_run_is_refused()
    {
        GapRun run = Holding.Solve();
        Assert.Throws<ArgumentOutOfRangeException>(() => run.At(run.End + Duration.FromMilliseconds(1)));
    }

    [Fact]
    public void A_run_is_a_pure_function()
    {
        GapRun a = Holding.Solve(), b = Holding.Solve();
        Assert.Equal(a.Outcome.Said(), b.Outcome.Said());
        Assert.Equal(a.Statistics.Work, b.Statistics.Work);
        Assert.Equal(a.PeakGaugePressure.Pascals, b.PeakGaugePressure.Pascals);
    }

    [Fact]
    public void A_cancelled_run_stops() =>
        Assert.Throws<OperationCanceledException>(() => Holding.Solve(cancellationToken: new CancellationToken(true)));

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
