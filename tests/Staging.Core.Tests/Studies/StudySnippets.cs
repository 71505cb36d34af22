using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Tests.Studies;

/// <summary>The lines a user writes: shown in the documentation, run here.</summary>
public class StudySnippets
{
    #region study-inputs
    private static readonly StudyInput<GapProblem> Breakaway = new StudyInput<GapProblem>(
        "joint.breakaway", "N", Distribution.Triangular(10, 20, 60), (p, v) => p with
        {
            Design = p.Design with { Joint = p.Design.Joint.Coupler with { BreakawayForce = Force.FromNewtons(v), SlidingForce = Force.FromNewtons(0.8 * v) } },
        });

    private static readonly StudyInput<GapProblem> Strength = new StudyInput<GapProblem>(
        "source.strength", "MPa", Distribution.TruncatedNormal(5, 1.5, 2, 10), (p, v) => p with
        {
            Design = p.Design with { Source = StartingGaps.Booster with { Strength = Pressure.FromMegapascals(v) } },
        });

    private static readonly StudyInput<GapProblem> Ignition = new StudyInput<GapProblem>(
        "grain.ignition", "K", Distribution.Uniform(723, 823), (p, v) => p with
        {
            Design = p.Design with { Grain = p.Design.Grain with { IgnitionTemperature = Temperature.FromKelvins(v) } },
        });
    #endregion

    private static GapProblem Start => Vented(4);

    [Fact]
    public void Sweep_any_function()
    {
        #region study-sweep
        Axis length = Axis.Even("length", "m", 0.1, 1, 10);
        SweepLine<double> periods = Sweep.Along(length, (metres, _) => 2 * Math.PI * Math.Sqrt(metres / 9.80665));
        periods.WriteCsv(Console.Out, new Measure<double>("period", "s", p => p));
        #endregion
        Assert.Equal(2.006, periods.Results[^1], 0.001);
    }

    [Fact]
    public void Odds_of_a_gap()
    {
        GapProblem gap = Start;
        #region study-reliability
        var study = new ReliabilityStudy<GapProblem, GapRun>
        {
            Inputs = new(gap, Breakaway, Strength, Ignition),
            Model = (p, stop) => p.Solve(options: SolverOptions.ForStudies, cancellationToken: stop),
            Outcome = run => run.Outcome.GetType().Name,
            Measures = [new Measure<GapRun>("lit time", "ms", run => run.TimeOf(GapEventKind.Lit)?.Milliseconds)],
            Cases = 48,
        };
        ReliabilityRun odds = study.Run(progress: new Progress<StudyProgress>(p => Console.WriteLine($"{p.Fraction:P0}, {p.Remaining.Seconds:F0} s to go")));
        Console.WriteLine($"lit: {odds.Probability("Lit")}");
        Console.WriteLine(odds.Measure("lit time"));
        #endregion
        Assert.True(odds.IsWhole);
        Assert.Equal(0, odds.Outcomes.GetValueOrDefault(ReliabilityRun.Refused));
        Assert.Equal(odds.Outcomes.GetValueOrDefault("Lit"), odds.Measure("lit time").Count);

        #region study-shards
        ReliabilityRun[] parts = [.. Enumerable.Range(1, 3).Select(k => study.Run(new StudyOptions { Part = new StudyPart(k, 3) }))];
        ReliabilityRun whole = ReliabilityRun.Merge([.. parts]);
        #endregion
        Assert.Equal(ReliabilityTests.Text(odds), ReliabilityTests.Text(whole));
    }

    [Fact]
    public void Indices_from_seven_files()
    {
        GapProblem gap = Start;
        using var scratch = new Samples.Scratch();
        string folder = scratch.Folder;
        var study = new SensitivityStudy<GapProblem>
        {
            Inputs = new(gap, Breakaway, Strength, Ignition),
            Unit = "K",
            Model = (p, stop) => p.Solve(options: SolverOptions.ForStudies, cancellationToken: stop).PeakGrainSurface.Kelvins
                - p.Design.Grain.IgnitionTemperature.Kelvins,
        };
        #region study-parts
        PartitionedStudy<ImmutableArray<SobolIndex>> shares = study.VarianceSharesInParts(rows: 4, repetitions: 4);

        void RunPart(int k) // on any machine, for example part 2 of 7
        {
            using StreamWriter file = File.CreateText(Path.Combine(folder, $"part-{k}.txt"));
            shares.Run(new StudyOptions { Part = new StudyPart(k, 7) }).Write(file);
        }

        ImmutableArray<SobolIndex> Indices() // at home, when seven files have come in
        {
            return shares.Of(PartResult.Merge([.. Directory.GetFiles(folder, "part-*.txt").Select(PartOf)]));
        }

        PartResult PartOf(string path)
        {
            using StreamReader file = File.OpenText(path);
            return PartResult.Read(file);
        }
        #endregion
        for (int k = 1; k <= 7; k++)
            RunPart(k);
        static (double, double, double) Numbers(SobolIndex s) => (s.First, s.Total, s.TotalInterval.Low);
        Assert.Equal(study.VarianceShares(rows: 4, repetitions: 4).Select(Numbers), Indices().Select(Numbers));
    }

    [Fact]
    public void Sweep_in_parts()
    {
        #region study-sweep-parts
        Axis length = Axis.Even("length", "m", 0.1, 1, 10), gravity = Axis.Even("gravity", "m/s2", 1.6, 9.8, 5);
        PartitionedStudy<SweepMap<double>> periods = Sweep.OverInParts(
            length, gravity, (metres, g, _) => 2 * Math.PI * Math.Sqrt(metres / g), Sweep.Number("period", "s"));
        PartResult[] parts = [.. Enumerable.Range(1, 7).Select(k => periods.Run(new StudyOptions { Part = new StudyPart(k, 7) }))];
        SweepMap<double> map = periods.Of(PartResult.Merge([.. parts]));
        #endregion
        Assert.Equal(Sweep.Over(length, gravity, (metres, g, _) => 2 * Math.PI * Math.Sqrt(metres / g)).Results, map.Results);
    }

    [Fact]
    public void Window_of_vent_area()
    {
        #region study-window
        Axis area = Axis.Factors("vent area", "mm2", 2, 400, 12);
        WindowResult window = Sweep.Windows(
            area, 0.02, (mm2, stop) => WithVentArea(mm2).Solve(options: SolverOptions.ForStudies, cancellationToken: stop).Outcome.IsLit);
        Console.WriteLine(window.Widest is { } widest ? $"lights from {widest} mm2" : "no vent area lights this gap");
        #endregion
        Assert.NotNull(window.Widest);
        Assert.False(window.Widest.LowIsEndOfSearch);
        Assert.True(WithVentArea(window.Widest.Low).Solve().Outcome.IsLit);
        Assert.False(WithVentArea(window.Widest.Low / 1.03).Solve().Outcome.IsLit);
    }

    [Fact]
    public void What_matters_most()
    {
        GapProblem gap = Start;
        #region study-sensitivity
        var study = new SensitivityStudy<GapProblem>
        {
            Inputs = new(gap, Breakaway, Strength, Ignition),
            Unit = "K",
            Model = (p, stop) => p.Solve(options: SolverOptions.ForStudies, cancellationToken: stop).PeakGrainSurface.Kelvins
                - p.Design.Grain.IgnitionTemperature.Kelvins,
        };
        foreach (MorrisEffect effect in study.Screen(paths: 6).OrderByDescending(e => e.MeanAbsolute))
            Console.WriteLine($"{effect.Input}: {effect.MeanAbsolute:F0} K");
        foreach (TornadoBar bar in study.Bars())
            Console.WriteLine($"{bar.Input}: {bar.AtLow:F0} K to {bar.AtHigh:F0} K");
        #endregion
        Assert.Equal(-1, study.Bars().Single(b => b.Input.Name == "grain.ignition").Slope!.Value, 0.2);
    }

    [Fact]
    public void Fit_to_a_trace()
    {
        GapProblem gap = Start;
        using var csv = new StringWriter();
        csv.WriteLine("time_s,gauge_Pa");
        GapRun truth = Strength.With(gap, 6.5).Solve();
        foreach (double t in Enumerable.Range(1, 40).Select(i => 5e-4 * i))
            csv.WriteLine(FormattableString.Invariant($"{t:R},{Gauge(truth, [t])[0]:R}"));
        using var file = new StringReader(csv.ToString());
        #region study-calibration
        MeasuredTrace trace = MeasuredTrace.ReadCsv(file); // time_s,gauge_Pa
        CalibrationResult<GapProblem> fit = new InputSet<GapProblem>(gap, Strength).Fit(
            trace, (p, times, stop) => Gauge(p.Solve(cancellationToken: stop), times));
        Console.WriteLine(fit.Inputs[0]);
        foreach (ModelFinding doubt in fit.Findings)
            Console.WriteLine(doubt);
        #endregion
        Assert.Equal(6.5, fit.Inputs[0].Value, 0.02);
    }

    private static ImmutableArray<double> Gauge(GapRun run, ImmutableArray<double> times) =>
        [.. times.Select(t => run.At(Duration.FromSeconds(Math.Min(t, run.End.Seconds))).GapPressure.Pascals - run.Problem.Surroundings.Pressure.Pascals)];

    private static GapProblem Vented(double diameter_mm)
    {
        GapProblem start = StartingGaps.Bore18mm;
        var holes = new VentHoles { Diameter = Length.FromMillimeters(diameter_mm), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
        return start with { Design = start.Design with { Vents = [Vent.BelowNozzle(start.Design.Tube, holes, Length.FromMillimeters(1))] } };
    }

    private static GapProblem WithVentArea(double mm2) => Vented(Math.Sqrt(mm2 / Math.PI));
}
