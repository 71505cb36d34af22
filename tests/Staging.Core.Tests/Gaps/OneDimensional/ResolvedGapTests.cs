using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>Whole gap runs on the resolved model, and what they share with the displacement model.</summary>
public class ResolvedGapTests
{
    private static readonly GapModel.OneDimensional Coarse = new() { Cells = 60 };
    private static readonly GapProblem Holding = Bench.Gap.With(d => d with { Joint = Bench.Joint(2000), Vents = [Bench.Hole(d.Tube, 5, 2)] });

    [Fact]
    public void Ledgers_close_to_round_off_with_everything_at_work()
    {
        // Joint that slides and opens, wall heat, friction, vents, dead end, chamber, nozzle, fragments.
        foreach (GapProblem gap in (GapProblem[])[Bench.Gap, Holding, Bench.Gap.With(d => d with { Vents = [] })])
        {
            GapLedger ledger = gap.Solve(Coarse).Ledger;
            Assert.InRange(ledger.RelativeMassResidual, -1e-12, 1e-12);
            Assert.InRange(ledger.RelativeEnergyResidual, -1e-12, 1e-12);
        }
    }

    /// <summary>While the joint slides the first cell is longer than the others; holes over it stir it all the same.</summary>
    [Theory]
    [InlineData(25, 6, 3.5, 20)]
    [InlineData(20, 3, 1.7, 20)]
    [InlineData(20, 3, 1.7, 60)]
    public void Ledgers_close_with_holes_over_the_cell_that_grows(double length, double diameter, double station, int cells)
    {
        GapRun run = Bench.Gap.With(d => d with
        {
            Tube = Bench.Tube(length),
            Vents = [Bench.Hole(Bench.Tube(length), diameter) with { Station = Length.FromMillimeters(station) }],
            Joint = Bench.Joint(8),
        }).Solve(new GapModel.OneDimensional { Cells = cells });
        Assert.NotNull(run.TimeOf(GapEventKind.JointMoves));
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }

    [Fact]
    public void A_closed_gap_of_one_gamma_has_the_pressure_of_its_energy()
    {
        GapProblem gap = Bench.Adiabatic.With(d => d with { Vents = [], Joint = Bench.Joint(2000) }) with { Horizon = Duration.FromMilliseconds(60) };
        GapRun run = gap.Solve(Coarse);
        double cp = gap.Surroundings.Gas.HeatCapacityAtConstantPressure.JoulesPerKilogramKelvin;
        double chamber = gap.Motor().ChamberVolume.CubicMeters, air = gap.Design.Tube.Volume.CubicMeters + gap.Design.Grain.RecessVolume.CubicMeters;
        double burnt = gap.Motor().Web.Mass.Kilograms * cp * gap.Motor().FlameTemperature.Kelvins;
        double expected = (gap.Motor().ChamberPressure.Pascals * chamber + 101325 * air + 0.4 * burnt) / (chamber + air);

        // What still sloshes as kinetic energy, and the chamber's last lag, stay below a part in a thousand 35 ms after the source ended.
        Assert.InRange(run.At(run.End).GapPressure.Pascals / expected - 1, -1e-3, 1e-3);
    }

    /// <summary>The limit of very large vents: at outside pressure the front moves by the enthalpy that came in, whatever the waves do. What is left is less than a cell.</summary>
    [Fact]
    public void Behind_very_large_vents_the_front_moves_by_displacement_at_outside_pressure()
    {
        GapProblem gap = Bench.Adiabatic.With(d => d with
        {
            Tube = Bench.Tube(200),
            Vents = [new Vent { Station = Length.FromMillimeters(187), Holes = new VentHoles { Diameter = Length.FromMillimeters(25), WallThickness = Length.FromMillimeters(0.5), Count = 20 } }],
            Source = d.Motor() with { ChamberPressure = Pressure.FromKilopascals(150), Web = d.Web() with { Mass = Mass.FromGrams(0.02) } },
            Joint = Bench.Joint(2000),
        }) with
        { Horizon = Duration.FromMilliseconds(10.5) };
        double cp = gap.Surroundings.Gas.HeatCapacityAtConstantPressure.JoulesPerKilogramKelvin, area = gap.Design.Tube.CrossSection.SquareMeters;
        foreach (int cells in (int[])[50, 100, 200])
        {
            GapRun run = Bench.SolvedThoughImpossible(gap, new GapModel.OneDimensional { Cells = cells });
            foreach (double t in (double[])[4, 6, 8, 10])
            {
                GapSnapshot s = run.At(Duration.FromMilliseconds(t));
                double burnt = gap.Motor().Web.Mass.Kilograms * (1 - Math.Cos(Math.PI * t * 1e-3 / gap.Web().Time.Seconds)) / 2 * cp * gap.Motor().FlameTemperature.Kelvins;
                double heat = (gap.Motor().ChamberPressure - s.ChamberPressure).Pascals * 5e-6 / 0.4 + burnt, cell = 0.2 / cells;
                Assert.InRange(s.Front.Meters - 0.4 / (1.4 * 101325 * area) * heat, -cell, cell);
            }
        }
    }

    [Fact]
    public void A_source_long_against_the_acoustic_time_gives_what_the_displacement_model_gives()
    {
        // 25 ms of fragments against 0.3 ms for sound along 100 mm. No wall heat, which the models count over different surfaces, and a thin
        // front, which the resolved model has by itself. What remains from 3 ms on: pressure waves of the blowdown, within 1 %. Left out is the
        // time from 4 to 6 ms in which the dead end fills: there the displacement model stirs its cold air into the hot zone, where it expands,
        // and the resolved one into the stream at the holes, where it leaves (5 % in pressure).
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Tube = Bench.Tube(100),
            Vents = [Bench.Hole(Bench.Tube(100), 5, 2)],
            Joint = Bench.Joint(2000),
            MixingAndHeat = d.MixingAndHeat with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0, FrontThicknessInBores = 0.05 },
        }) with
        { Horizon = Duration.FromMilliseconds(12) };
        GapRun resolved = gap.Solve(new GapModel.OneDimensional { Cells = 100 }), displaced = gap.Solve();
        foreach (double t in (double[])[3, 3.25, 3.5, 3.75, 4, 6, 7, 8, 9, 10, 11, 12])
        {
            double a = resolved.At(Duration.FromMilliseconds(t)).GapPressure.Pascals, b = displaced.At(Duration.FromMilliseconds(t)).GapPressure.Pascals;
            Assert.InRange(a / b - 1, -0.01, 0.01);
        }

        // Before it comes to the hole, the resolved front lags by what its smearing costs: less than two cells of 1 mm.
        foreach (double t in (double[])[2, 2.5, 3, 3.5])
        {
            double lag = (displaced.At(Duration.FromMilliseconds(t)).Front - resolved.At(Duration.FromMilliseconds(t)).Front).Millimeters;
            Assert.InRange(lag, 0, 2);
        }
    }

    [Fact]
    public void Without_stirring_the_air_beyond_the_last_vent_stays_cold()
    {
        GapProblem With(double exchange) => Holding.With(d => d with
        {
            Vents = [d.Vents[0] with { Station = Length.FromMillimeters(225) }],
            MixingAndHeat = d.MixingAndHeat with { DeadEndExchange = exchange, StirringReachInBores = 10 },
        }) with
        { Horizon = Duration.FromMilliseconds(20) };
        GapSnapshot still = With(0).Solve(Coarse).At(Duration.FromMilliseconds(20));
        GapSnapshot stirred = With(0.5).Solve(Coarse).At(Duration.FromMilliseconds(20));

        // Compressed at most from 1 to 2 bar: below 288 K x 2^(0.4/1.4) = 351 K; numerical smearing of the front adds little.
        Assert.InRange(still.NozzleTemperature.Kelvins, 280, 420);
        Assert.True(still.ProductsAtNozzle < 0.05, $"{still.ProductsAtNozzle:P1} products without stirring");
        Assert.True(stirred.NozzleTemperature.Kelvins > 700, $"{stirred.NozzleTemperature.Kelvins:F0} K with stirring");
    }

    [Fact]
    public void Refinement_moves_the_peak_less_and_less_and_the_grain_little()
    {
        double[] peak = [.. Refined(r => r.PeakGaugePressure.Kilopascals)];
        double[] surface = [.. Refined(r => r.PeakGrainSurface.Kelvins)];
        Assert.True(Math.Abs(peak[2] - peak[1]) < Math.Abs(peak[1] - peak[0]), $"{string.Join(", ", peak)} kPa");
        Assert.InRange(Math.Abs(peak[2] - peak[1]) / peak[2], 0, 0.01);
        Assert.InRange(Math.Abs(surface[2] - surface[1]) / surface[2], 0, 0.01);

        static IEnumerable<double> Refined(Func<GapRun, double> value) =>
            ((int[])[50, 100, 200]).Select(n => value(Runs.Value[n]));
    }

    private static readonly Lazy<Dictionary<int, GapRun>> Runs = new(() =>
        ((int[])[50, 100, 200]).ToDictionary(n => n, n => Bench.Gap.Solve(new GapModel.OneDimensional { Cells = n })));

    /// <summary>The temperature of the products is the mean of the cells by the products in each, and that of the outside before any have come.</summary>
    [Fact]
    public void Products_are_as_hot_as_the_cells_that_hold_them()
    {
        GapRun run = Holding.Solve(Coarse with { ProfileTimes = [Duration.FromMilliseconds(3), Duration.FromMilliseconds(10)] });
        Assert.Equal(run.Problem.Surroundings.Temperature.Kelvins, run.At(Duration.Zero).HotTemperature.Kelvins, 1e-9);
        foreach (GapProfile profile in run.Profiles)
        {
            double[] products = [.. profile.Products.ToArray().Zip(profile.Density_kg_per_m3.ToArray(), (share, density) => share * density)];
            double mean = products.Zip(profile.Temperature_K.ToArray(), (mass, T) => mass * T).Sum() / products.Sum();
            Assert.Equal(mean, run.At(profile.Time).HotTemperature.Kelvins, 1e-3 * mean);
        }
    }

    [Fact]
    public void Every_run_tells_its_model_and_keeps_profiles_only_where_asked()
    {
        var model = new GapModel.OneDimensional { Cells = 40, ProfileTimes = [Duration.FromMilliseconds(2), Duration.Zero, Duration.FromMilliseconds(5)] };
        GapRun run = (Holding with { Horizon = Duration.FromMilliseconds(3) }).Solve(model);
        Assert.Same(model, run.Model);
        Assert.Equal([0.0, 2e-3], run.Profiles.Select(p => p.Time.Seconds));
        Assert.All(run.Profiles, p => Assert.Equal(40, p.Pressure_Pa.Length));
        GapProfile profile = run.Profiles[1];
        Assert.True(profile.Products.Span[0] > 0.9 && profile.Products.Span[39] < 1e-3, "products enter from the booster's end");
        Assert.True(profile.Temperature_K.Span[0] > 1000);
        Assert.Empty(Holding.Solve().Profiles);
        Assert.IsType<GapModel.TwoZone>(Holding.Solve().Model);
    }

    [Fact]
    public void The_union_of_models_treats_every_case()
    {
        Assert.Equal("two zones", new GapModel.TwoZone().Match(_ => "two zones", _ => "one zone", _ => "cells"));
        Assert.Equal("cells", Coarse.Match(_ => "two zones", _ => "one zone", _ => "cells"));
        Assert.Throws<ArgumentOutOfRangeException>(() => new GapModel.OneDimensional { Cells = 3 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new GapModel.OneDimensional { CourantNumber = double.NaN });
    }

    [Fact]
    public void Progress_comes_in_order_on_the_calling_thread_and_ends_with_one()
    {
        int thread = Environment.CurrentManagedThreadId;
        foreach (GapModel model in (GapModel[])[Coarse, new GapModel.TwoZone()])
        {
            var heard = new Listener();
            Holding.Solve(model, progress: heard);
            Assert.True(heard.Told.Count > 5);
            Assert.Equal(heard.Told.Select(p => p.Fraction).Order(), heard.Told.Select(p => p.Fraction));
            Assert.Equal(1, heard.Told[^1].Fraction);
            Assert.Single(heard.Told, p => p.Fraction == 1);
            Assert.All(heard.Threads, t => Assert.Equal(thread, t));
        }
    }

    [Fact]
    public void A_cancelled_run_stops()
    {
        using var source = new CancellationTokenSource();
        var stop = new Listener { OnTold = p => { if (p.Fraction > 0.03) source.Cancel(); } };
        Assert.Throws<OperationCanceledException>(() => Holding.Solve(Coarse, progress: stop, cancellationToken: source.Token));
        Assert.InRange(stop.Told[^1].Fraction, 0.03, 0.06);
    }

    [Fact]
    public void A_step_of_the_whole_gap_allocates_nothing() =>
        Assert.Equal(0, ResolvedSteps.Allocated(Bench.Gap, Coarse, JointPhase.Slides, acceleration: 100));

    [Fact]
    public void After_a_step_cut_short_sources_burn_no_further_than_the_middle_of_the_next()
    {
        // Thin air that runs away from the closed end at five times its speed of sound leaves next to nothing there: such steps are repeated at half their length.
        GapProblem thin = Bench.Adiabatic.With(d => d with { Vents = [], Joint = Bench.Joint(2000) }) with { Surroundings = Holding.Surroundings with { Pressure = Pressure.FromPascals(50) } };
        var run = new OneDimensionalGap(GapToSi.ToSi(thin), Coarse, 0.25, 0.027);
        for (int i = 0; i < 60; i++)
            run.Tube.Fill(i, 0.036, -239, 49, 0);
        run.Tube.Look();
        for (int s = 0; s < 400; s++)
            run.Step(1, JointPhase.Held, acceleration: 0);
        Assert.True(run.Tube.Repeats > 0, "the guard was met");
        double tau = thin.Web().Time.Seconds, middle = run.Time - 0.5 * run.LastStep;
        double burnt = 0.5 * thin.Motor().Web.Mass.Kilograms * (1 - Math.Cos(Math.PI * middle / tau));
        Assert.InRange(run.Given.Mass / burnt - 1, -1e-10, 1e-10);
    }

    [Fact]
    public void Running_out_of_steps_is_a_result()
    {
        GapRun run = Holding.Solve(Coarse, new SolverOptions { MaxSteps = 20 });
        Assert.Equal(SolverFailureKind.TooManySteps, Assert.IsType<GapOutcome.NotSolved>(run.Outcome).Failure.Kind);
    }

    [Fact]
    public void The_same_problem_gives_the_same_numbers()
    {
        GapProblem brief = Holding with { Horizon = Duration.FromMilliseconds(5) };
        GapRun a = brief.Solve(Coarse), b = brief.Solve(Coarse);
        Assert.Equal(a.PeakGaugePressure, b.PeakGaugePressure);
        Assert.Equal(a.Events.Times(), b.Events.Times());
        Assert.Equal(a.Statistics.Work, b.Statistics.Work);
    }

    private sealed class Listener : IProgress<SolveProgress>
    {
        public List<SolveProgress> Told { get; } = [];

        public List<int> Threads { get; } = [];

        public Action<SolveProgress>? OnTold { get; init; }

        public void Report(SolveProgress value)
        {
            Told.Add(value);
            Threads.Add(Environment.CurrentManagedThreadId);
            OnTold?.Invoke(value);
        }
    }
}
