using Staging.Core.Gaps;
using Staging.Core.GroundTests;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Tests.GroundTests;

/// <summary>Traces of the gap pressure: long ones, those of a motor that burns, unevenly sampled ones, and bad ones.</summary>
public class TraceTests
{
    private static readonly GapProblem Gap = CheapGap.Of(250) with { Horizon = Duration.FromSeconds(2) };

    /// <summary>Of a second of trace the likelihoods are far below what a number can be; nothing is called impossible for that.</summary>
    [Theory]
    [InlineData(0.25, 5)]
    [InlineData(1, 5)]
    [InlineData(0.04, 0.5)]
    public void A_long_trace_that_fits_is_explained(double seconds, double memory_ms)
    {
        GroundTest test = Traced(Even(seconds), Fits) with { Seen = Seen.Unknown };
        var series = new GroundTestSeries
        {
            Tests = [test],
            Discrepancy = new ModelDiscrepancy { PressureMemory = Duration.FromMilliseconds(memory_ms) },
        };
        Learned learned = CheapGap.Learn(series, 2048);
        Assert.InRange(learned.Explained[0], 0.99, 1);
        Assert.DoesNotContain(learned.Findings, f => f.Code is "TST010" or "TST011");
        Assert.True(double.IsFinite(learned.Posterior.Observations[0].LogBest));
        Assert.True(learned.Posterior.Inputs[1].Narrowing < 0.7);
    }

    /// <summary>What the upper motor does to the pressure once it burns is not compared with a gap in which it does not.</summary>
    [Fact]
    public void The_trace_of_a_lit_motor_counts_until_it_burns()
    {
        double[] times = Even(0.06);
        var lit = new TimeSeen { At = Duration.FromMilliseconds(20), Within = Duration.FromMilliseconds(1) };
        GroundTest burns = Traced(times, t => t > 0.02 ? 4e5 : Fits(t)) with { Seen = Seen.Lit, Lit = lit };
        GroundTest ends = Traced([.. times.Where(t => t <= 0.02)], Fits) with { Seen = Seen.Lit, Lit = lit };
        Assert.Empty(burns.Check());
        GapAnswer answer = CheapGap.Answer(Gap, new GapModel.TwoZone(), SolverOptions.ForStudies, default);
        Assert.Equal(Log(ends, answer), Log(burns, answer));
        ModelFinding finding = Assert.Single((burns with { Lit = null }).Check());
        Assert.Equal(("TST009", FindingSeverity.Warning), (finding.Code, finding.Severity));
    }

    /// <summary>A trace that is dense at its start weighs its times, not its samples.</summary>
    [Fact]
    public void Samples_count_by_the_time_they_stand_for()
    {
        GapAnswer answer = CheapGap.Answer(Gap, new GapModel.TwoZone(), SolverOptions.ForStudies, default);
        double[] even = Even(0.05), dense = [.. even.Take(10).SelectMany(t => new[] { t, t + 5e-5, t + 1e-4, t + 2e-4 }), .. even.Skip(10)];
        double Off(double t) => Fits(t) + (t < 0.01 ? 3e4 : 0);
        Assert.Equal(Log(Traced(even, Off), answer), Log(Traced(dense, Off), answer), 0.1);
        Assert.True(Log(Traced(even, Off), answer) < Log(Traced(even, Fits), answer) - 0.5);
    }

    [Fact]
    public void Samples_before_the_burn_through_are_refused_before_anything_is_run()
    {
        ModelFinding finding = Assert.Single(Traced([-0.002, 0, 0.01], Fits).Check());
        Assert.Equal("TST008", finding.Code);
        Assert.Contains("begins at -2 ms", finding.Message, StringComparison.Ordinal);
    }

    private static double Log(GroundTest test, GapAnswer answer) => new TestLikelihood(test, ModelDiscrepancy.Judged).Log(answer);

    private static double Fits(double time) => 5e4 * Math.Sin(Math.Min(Math.PI, 100 * time));

    private static double[] Even(double seconds) => [.. Enumerable.Range(0, 201).Select(i => i * seconds / 200)];

    private static GroundTest Traced(double[] times, Func<double, double> gauge) => new()
    {
        Name = "traced",
        Gap = Gap,
        Seen = Seen.Unknown,
        Pressure = MeasuredTrace.Of("gauge_Pa", [.. times], [.. times.Select(gauge)]),
        GaugeError = Pressure.FromKilopascals(2),
    };
}
