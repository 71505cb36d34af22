using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Plans;
using Staging.Core.Plans.Reading;
using Staging.Core.Studies;
using Staging.Core.Tests.Flight;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Plans;
using UnitsNet;

namespace Staging.Core.Tests;

/// <summary>Neither a text from elsewhere nor a tiny step takes the memory: messages are short, and samples are counted before they are made.</summary>
public class InputSizeTests
{
    private static readonly string Long = new('7', 2_000_000);

    private const string PointsUpToSeed = "staging study points, form 2\ncases 1\nseed ";

    private const string Odds = "staging study part, form 3\ncases 2\nseed 5\ndesign Independent\ninputs 0\nspreads 0\n"
        + "measures 1\nmeasure 1 mm third\nrange 0 2\nstopped-early 0\n";

    public static TheoryData<string, Action<string>> Readers => new()
    {
        { Long, text => ThrustHistory.FromCsv(new StringReader(text)) },
        { "time_s,thrust_N\n" + Long, text => ThrustHistory.FromCsv(new StringReader(text)) },
        { "time_s,thrust_N\n0," + Long + "x", text => ThrustHistory.FromCsv(new StringReader(text)) },
        { "time_s,gauge_Pa\n" + Long, text => MeasuredTrace.ReadCsv(new StringReader(text)) },
        { Long, text => PartResult.Read(new StringReader(text)) },
        { "staging study points, form 2\ncases " + Long + "x", text => PartResult.Read(new StringReader(text)) },
        { PointsUpToSeed + Long, text => PartResult.Read(new StringReader(text)) },
        { PointsUpToSeed + "5\ndesign d\ninputs 1\ninput 1 mm " + Long + "?", text => PartResult.Read(new StringReader(text)) },
        { PointsUpToSeed + "5\ndesign d\ninputs 0\nspreads 0\nmeasures 1\nmeasure 1 mm " + Long + "\nrange 0 1\ncase 0 x", text => PartResult.Read(new StringReader(text)) },
        { Odds.Replace("Independent", Long, StringComparison.Ordinal), text => ReliabilityRun.Read(new StringReader(text)) },
        { Odds.Replace("early 0", "early " + Long, StringComparison.Ordinal), text => ReliabilityRun.Read(new StringReader(text)) },
        { Odds + "outcome 1 " + Long + "\noutcome 1 " + Long, text => ReliabilityRun.Read(new StringReader(text)) },
        { Odds + "outcome 2 a\nrefusals 0\nends 2 0 1\nsum " + Long + "x", text => ReliabilityRun.Read(new StringReader(text)) },
        { Odds + "outcome 2 a\nrefusals 0\nends 2 0 1\nsum 1\nsquares 1\nbin " + Long + " 1", text => ReliabilityRun.Read(new StringReader(text)) },
    };

    [Theory]
    [MemberData(nameof(Readers), DisableDiscoveryEnumeration = true)]
    public void A_message_is_never_as_long_as_what_it_is_about(string text, Action<string> read) =>
        Assert.InRange(Assert.Throws<FormatException>(() => read(text)).Message.Length, 20, 250);

    /// <summary>Names that a plan gives to its parts come back in findings.</summary>
    [Fact]
    public void A_finding_is_never_as_long_as_the_names_it_tells_of()
    {
        FlightPlan plan = TestFlights.TwoStages();
        Stage below = plan.Stages[0] with { Name = Long, Motor = plan.Stages[0].Motor with { Name = Long, ForwardEnd = new MotorForwardEnd.Plugged() } };
        ModelFinding[] findings = [.. (plan with { Stages = [below, plan.Stages[1] with { Name = Long }] }).Check()];
        Assert.Contains(findings, f => f.Code == "FLT002");
        Assert.Contains(findings, f => f.Code == "FLT008");
        Assert.All(findings, f => Assert.InRange(f.Message.Length, 20, 300));
    }

    /// <summary>A name of some length is one that no file has; a longer one, no file can have.</summary>
    [Theory]
    [InlineData(200, "there is no such file")]
    [InlineData(2_000_000, "the file cannot be read")]
    public void A_refused_file_is_never_told_by_all_of_its_name(int length, string says)
    {
        string text = DemoPlan.Short.Replace("\"booster-motor.csv\"", $"\"{Long[..length]}\"", StringComparison.Ordinal);
        PlanProblem problem = Assert.Throws<PlanFormatException>(() => DemoPlan.Parse(text)).Problems[0];
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
        Assert.InRange(problem.Message.Length, 20, 400);
    }

    /// <summary>What opens files may be of any kind, and take any name.</summary>
    [Theory]
    [InlineData("time_s,thrust_N\n0,x\n", "is not a number")]
    [InlineData(null, "not UTF-8")]
    [InlineData("", "longer than")]
    public void A_file_that_is_no_curve_is_never_told_by_all_of_its_name(string? curve, string says)
    {
        string text = DemoPlan.Short.Replace("\"booster-motor.csv\"", $"\"{Long}\"", StringComparison.Ordinal);
        TextReader Open(string name) => curve switch
        {
            null => new StreamReader(new MemoryStream([0xff]), new System.Text.UTF8Encoding(false, throwOnInvalidBytes: true)),
            "" => new StringReader(new string(' ', InputLimits.MaxCharacters + 1)),
            _ => new StringReader(curve),
        };
        PlanProblem problem = Assert.Throws<PlanFormatException>(() => StagingPlan.Parse(text, Open)).Problems[0];
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
        Assert.InRange(problem.Message.Length, 20, 400);
    }

    [Fact]
    public void A_gas_is_never_told_by_all_of_its_name()
    {
        PerfectGas dense = PerfectGas.FromMolarMass("dense", MolarMass.FromGramsPerMole(200), 1.02, Bench.Invented);
        DustyGas heavy = Bench.Powder(0.2) with { Name = Long, Gas = dense, ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(5000) };
        var half = new GasMixture { Name = Long, Shares = [(dense, 0.5)] };
        ModelFinding[] findings = [.. heavy.Check(), .. half.Check()];
        Assert.Equal(["GAS003", "GAS002"], findings.Select(f => f.Code));
        Assert.All(findings, f => Assert.InRange(f.Message.Length, 20, 300));
    }

    /// <summary>A name has room for any number of codes, and each would have its findings.</summary>
    [Fact]
    public void Of_many_codes_in_a_name_the_first_is_compared()
    {
        Motor motor = TestFlights.TwoStages().Stages[0].Motor;
        string[] Told(string name) => [.. MotorDesignation.OfName(motor with { Name = name }, "Motor").Select(f => f.Message)];
        Assert.NotEmpty(Told("demo O40-P"));
        Assert.NotEqual(Told("demo O40-P"), Told("demo A8-3"));
        Assert.Equal(Told("demo O40-P"), Told("demo O40-P " + string.Concat(Enumerable.Repeat("A8-3 ", 10_000))));
    }

    [Fact]
    public void An_excerpt_is_whole_or_begins_the_text_and_halves_no_character()
    {
        string sixty = new('a', Excerpt.Longest);
        Assert.Equal(sixty, Excerpt.Of(sixty));
        Assert.Equal(sixty + "...", Excerpt.Of(sixty + "b"));
        Assert.Equal(sixty[1..] + "...", Excerpt.Of(sixty[1..] + "\U0001F680b"));
    }

    [Fact]
    public void More_than_a_million_moments_of_a_gap_are_refused_before_they_are_taken()
    {
        GapRun run = Bench.Gap.Solve();
        double least = 1e-6 * run.End.Seconds;
        Refused(() => run.Sample(Duration.FromNanoseconds(1)), $"it must be between {least.ToString("G6", System.Globalization.CultureInfo.InvariantCulture)} and 10 s");
        Assert.InRange(run.Sample(Duration.FromSeconds(run.End.Seconds / 1000)).Time_s.Length, 1000, 1002);
    }

    [Fact]
    public void More_than_a_million_rows_of_a_flight_are_refused_before_they_are_taken()
    {
        BodyFlight body = TestFlights.TwoStages().Flown().Bodies[0];
        Refused(() => body.Sample(Duration.FromMicroseconds(1)), "it must be between");
        Assert.NotEqual(0, body.Sample(Duration.FromSeconds(0.1)).Time_s.Length);
    }

    private static void Refused(Action take, string says)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Contains(says, Assert.Throws<ArgumentOutOfRangeException>(take).Message, StringComparison.Ordinal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1_000_000);
    }
}
