using Staging.Core.Campaign.Drawing;
using Staging.Core.Campaign.Oracle;
using Staging.Core.Gaps;
using Staging.Core.GroundTests;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Campaign.Subjects;

/// <summary>One series of one to three tests on the ground: written, read again, learnt from, and the odds of the next gap.</summary>
internal sealed class GroundTestSubject : ISubject
{
    private const int Cases = 12;

    public string Name => "tests";

    public string Steps => "cases of the study times tests";

    public Action<Facts> Make(Draws draws)
    {
        GapProblem gap = GapDraws.Problem(draws) with { DynamicPressure = Pressure.Zero };
        var series = new GroundTestSeries
        {
            Tests = [.. Enumerable.Range(1, 1 + draws.Choice("tests", 3)).Select(i => Test(draws, $"test{i}.", $"test {i}", gap))],
            Discrepancy = new ModelDiscrepancy
            {
                WrongOutcome = draws.Number("wrong", new(0.1, 0.02, 0.3, 0, 0.6)),
                TimeSpread = draws.Number("time-spread", new(0.3, 0.1, 0.5, 1e-3, 0.5)),
                PressureSpread = draws.Number("pressure-spread", new(0.3, 0.1, 0.6, 1e-3, 2)),
                PressureMemory = Duration.FromSeconds(draws.Number("memory", new(0.005, 1e-3, 0.02, 1e-6, 1))),
            },
        };
        ulong seed = (ulong)draws.Choice("seed", 1000);
        return facts => Learn(series, gap, seed, facts);
    }

    private static void Learn(GroundTestSeries series, GapProblem next, ulong seed, Facts facts)
    {
        Check(series);
        if (GroundTestSeries.Parse(series.ToJson()) != series)
            facts.Break("series read differs", "a series that was written is read as another");
        Learned learned = series.Learn(Cases, seed, options: new StudyOptions { Threads = 1 });
        facts.Steps += Cases * series.Tests.Length;
        facts.Answer = "learned";
        facts.Read("posterior", learned.Posterior);
        facts.Read("explained", learned.Explained);
        facts.Read("findings", learned.Findings);
        facts.Text("text", learned.ToString());
        foreach (double share in learned.Explained)
            facts.Within("share explained", "Explained", share, 0, 1);
        LearnedOdds odds = learned.Odds(next, runs: 10, options: new StudyOptions { Threads = 1 });
        facts.Read("odds", odds);
    }

    private static void Check(GroundTestSeries series)
    {
        if (series.Check().Where(f => f.Severity == FindingSeverity.Error).ToArray() is { Length: > 0 } errors)
            throw new InvalidModelException([.. errors]);
    }

    private static GroundTest Test(Draws d, string at, string name, GapProblem gap)
    {
        var seen = (Seen)d.Choice(at + "seen", Enum.GetValues<Seen>().Length);
        return new GroundTest
        {
            Name = name,
            Gap = gap.With(length: Length.FromMeters(
                Math.Clamp(gap.Design.Tube.Length.Meters * d.Number(at + "length", new(1, 1, 1.5, 0.8, 2)), 1e-3, 5))),
            Seen = seen,
            FirstFlame = d.Choice(at + "flame", 4) == 1 ? Time(d, at + "flame-at") : null,
            JointMoves = d.Choice(at + "moves", 4) == 1 ? Time(d, at + "moves-at") : null,
            Parted = seen == Seen.PartedFirst && d.Choice(at + "parts", 2) == 1 ? Time(d, at + "parts-at") : null,
            Lit = seen == Seen.Lit && d.Choice(at + "lights", 2) == 1 ? Time(d, at + "lights-at") : null,
            Pressure = d.Choice(at + "gauge", 4) == 1 ? Trace(d, at) : null,
            GaugeError = Pressure.FromPascals(d.Number(at + "gauge-error", new(2000, 500, 5000, 0, 1e6))),
            Doubt = d.Number(at + "doubt", new(0, 0, 0.2, 0, 0.99)),
        };
    }

    private static TimeSeen Time(Draws d, string at) => new()
    {
        At = Duration.FromSeconds(d.Number(at, new(0.01, 0.001, 0.05, 1e-6, 10))),
        Within = Duration.FromSeconds(d.Number(at + "-within", new(0.002, 5e-4, 0.01, 1e-6, 1))),
    };

    private static MeasuredTrace Trace(Draws d, string at)
    {
        double peak = d.Number(at + "gauge-peak", new(5e4, 1e4, 2e5, 0, 1e7));
        double end = d.Number(at + "gauge-end", new(0.04, 0.01, 0.05, 1e-4, 1));
        double[] times = [.. Enumerable.Range(0, 12).Select(i => end * i / 11)];
        return MeasuredTrace.Of("gauge_Pa", [.. times], [.. times.Select(t => peak * Math.Sin(Math.PI * t / end))]);
    }
}
