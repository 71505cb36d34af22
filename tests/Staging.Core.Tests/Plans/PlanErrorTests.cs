using System.Text;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Plans;
using Staging.Core.Solving;

namespace Staging.Core.Tests.Plans;

/// <summary>Each kind of error in a plan: where it is reported, and in what words.</summary>
public class PlanErrorTests
{
    private const string Gap = "$.flight.stages[1].ignition.gap";

    public static TheoryData<string, string, string, string> SingleErrors => new()
    {
        // passage of the demo plan, what stands there instead, where it is reported, in what words
        { "\"unit\": \"MPa\"", "\"unit\": \"furlong\"", Gap + ".design.source.strength.unit", "'furlong' is not an accepted unit of pressure; accepted: Pa, hPa, kPa, MPa, bar, psi." },
        { "{ \"value\": 5, \"unit\": \"MPa\" }", "5", Gap + ".design.source.strength", "the number 5 has no unit; write \"5 MPa\", with one of Pa, hPa, kPa, MPa, bar, psi." },
        { "{ \"value\": 400, \"unit\": \"m\" }", "\"1e308\"", "$.siteSize", "'1e308' has no unit; write" },
        { "{ \"value\": 5, \"unit\": \"MPa\" }", "1e999", Gap + ".design.source.strength", "the number 1e999 has no unit; write \"1e999 Pa\", with one of Pa, hPa, kPa, MPa, bar, psi." },
        { "{ \"value\": 400, \"unit\": \"m\" }", "\"400\"", "$.siteSize", "'400' has no unit; write \"400 m\", with one of m, km, cm, mm, um, in, ft." },
        { "{ \"value\": 5, \"unit\": \"MPa\" }", "{ \"value\": 5 }", Gap + ".design.source.strength.unit", "the key is missing; wanted: one of Pa, hPa, kPa, MPa, bar, psi" },
        { "{ \"value\": 5, \"unit\": \"MPa\" }", "{ \"value\": \"5\", \"unit\": \"MPa\" }", Gap + ".design.source.strength.value", "a number is wanted here; this is a text." },
        { "{ \"value\": 5, \"unit\": \"MPa\" }", "{ \"value\": 1e999, \"unit\": \"MPa\" }", Gap + ".design.source.strength.value", "1e999 is too large a number." },
        { "{ \"value\": 5, \"unit\": \"MPa\" }", "{ \"value\": 0.5, \"unit\": \"psi\" }", Gap + ".design.source.strength", "0.5 psi is outside the range; it must be between 29.0075 and 14503.8 psi." },
        { "{ \"value\": 5, \"unit\": \"MPa\" }", "null", Gap + ".design.source.strength", "null is not accepted; pressure with its unit, \"... Pa\", is wanted here, and what does not apply is left out." },
        { "{ \"value\": 1890, \"unit\": \"K\" }", "{ \"value\": 5000, \"unit\": \"degC\" }", Gap + ".design.source.flameTemperature", "5000 degC is outside the range; it must be between 526.85 and 3226.85 degC." },
        { "\"particleEfficiency\": 0.25", "\"particleEfficiency\": 1.5", Gap + ".design.mixingAndHeat.particleEfficiency", "1.5 is outside the range; it must be between 0 and 1." },
        { "\"motorCount\": 1,", "\"motorCount\": 1.5,", "$.flight.stages[0].motorCount", "1.5 is not a count; a whole number is wanted here." },
        { "\"motorCount\": 1,", "\"motorCount\": 0,", "$.flight.stages[0].motorCount", "0 is outside the range; it must be between 1 and 100." },
        { "\"motorCount\": 1,", "\"motorCount\": 1, \"motorCount\": 1,", "$.flight.stages[0].motorCount", "the key stands here more than once." },
        { "\"siteSize\": { \"value\": 400, \"unit\": \"m\" },", "", "$.siteSize", "the key is missing; wanted: Smallest dimension of the launch site" },
        { "\"motorCount\": 1,", "\"motorCount\": 1, \"colour\": \"red\",", "$.flight.stages[0].colour", "'colour' is not a known key here; accepted: name, structureMass, motor, motorCount, parallelMotors, drag, dragWhileBurning, dragWhenDropped, recovery, ignition." },
        { "\"motorCount\": 1,", "\"motorCount\": 1, \"it's\": 1,", "$.flight.stages[0]['it\\'s']", "'it's' is not a known key here" },
        { "\"motorCount\": 1,", "\"motorCount\": 1, \"two\\nlines\": 1,", "$.flight.stages[0]['two\\u000alines']", "'two\\u000alines' is not a known key here" },
        { "\"motorCount\": 1,", "\"motorCount\": 1, \"\\ud800\": 1,", "$.flight.stages[0]", "a key holds half a surrogate pair; it is not Unicode." },
        { "\"name\": \"booster\"", "\"name\": \"\\ud800\"", "$.flight.stages[0].name", "the text holds half a surrogate pair; it is not Unicode." },
        { "\"name\": \"booster\"", "\"name\": \" \"", "$.flight.stages[0].name", "the text is blank; some words are wanted here." },
        { "\"name\": \"booster\"", "\"name\": 7", "$.flight.stages[0].name", "a text is wanted here; this is a number." },
        { "\"kind\": \"atLaunch\"", "\"kind\": \"atLaunsh\"", "$.flight.stages[0].ignition.kind", "'atLaunsh' is not a known kind here; did you mean 'atLaunch'? Accepted: atLaunch, byContact, byGap, byElectronics." },
        { "\"kind\": \"atLaunch\"", "", "$.flight.stages[0].ignition.kind", "the key is missing; wanted: one of atLaunch, byContact, byGap, byElectronics." },
        { "\"kind\": \"atLaunch\"", "\"kind\": \"atLaunch\", \"lag\": 1", "$.flight.stages[0].ignition.lag", "'lag' is not a known key here; accepted: kind." },
        { "\"how\": \"invented\"", "\"how\": \"guessed\"", "$.flight.stages[0].motor.provenance.how", "'guessed' is not a known word here; accepted: seenInSource" },
        { "\"mach\": [0, 0.6, 0.9, 1.1]", "\"mach\": [0, 0.6, 0.9, 0.9]", "$.flight.stages[0].drag.mach", "Point 4: the Mach number is 0.9; it must rise from point to point, between 0 and 50." },
        { "\"mach\": [0, 0.6, 0.9, 1.1]", "\"mach\": [0, 0.6, 0.9]", "$.flight.stages[0].drag.mach", "A drag table needs two points or more and equal columns; it has 3 and 4." },
        { "\"mach\": [0, 0.6, 0.9, 1.1]", "\"mach\": [0, \"x\", 0.9, 1.1]", "$.flight.stages[0].drag.mach[1]", "a number is wanted here; this is a text." },
        { "\"thrustHistoryFile\": \"booster-motor.csv\"", "\"time_s\": [0, 1], \"thrust_N\": [0, 0]", "$.flight.stages[0].motor.thrust.thrust_N", "Point 1, thrust_N: the thrust is zero throughout; some point must be above 0 N." },
        { "\"thrustHistoryFile\": \"booster-motor.csv\"", "\"thrustHistoryFile\": \"../plan.json\"", "$.flight.stages[0].motor.thrust.thrustHistoryFile", "'../plan.json' is not accepted as a file name; wanted: a file beside the plan or in a folder below it, with / between folders." },
        { "\"thrustHistoryFile\": \"booster-motor.csv\"", "\"thrustHistoryFile\": \"/etc/hostname\"", "$.flight.stages[0].motor.thrust.thrustHistoryFile", "'/etc/hostname' is not accepted as a file name" },
        { "\"thrustHistoryFile\": \"booster-motor.csv\"", "\"thrustHistoryFile\": \"none.csv\"", "$.flight.stages[0].motor.thrust.thrustHistoryFile", "none.csv: there is no such file" },
        { "\"thrustHistoryFile\": \"booster-motor.csv\"", "\"thrustHistoryFile\": \"plan.json\"", "$.flight.stages[0].motor.thrust.thrustHistoryFile", "plan.json: Line 1: the header must read 'time_s,thrust_N'; it reads '{'." },
    };

    [Theory]
    [InlineData("\"structureMass\": { \"value\": 15, \"unit\": \"g\" }", "structureMass", "15", "g")]
    [InlineData("\"structureMass\": { \"value\": 15, \"unit\": \"g\" }", "structureMass", "0.015", "kg")]
    [InlineData("\"structureMass\": { \"value\": 15, \"unit\": \"g\" }", "structureMass", "-15", "kg")]
    [InlineData("\"station\": { \"value\": 116.5, \"unit\": \"mm\" }", "station", "116.5", "mm")]
    [InlineData("\"station\": { \"value\": 116.5, \"unit\": \"mm\" }", "station", "0.1165", "m")]
    public void A_number_without_a_unit_is_told_with_one_that_fits_a_range_from_zero(string passage, string key, string number, string unit)
    {
        PlanProblem problem = Assert.Single(DemoPlan.ProblemsOf(DemoPlan.With(passage, $"\"{key}\": {number}")));
        Assert.StartsWith($"the number {number} has no unit; write \"{number} {unit}\", with one of", problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(SingleErrors))]
    public void One_error_is_reported_once_where_it_stands(string passage, string instead, string path, string words)
    {
        PlanProblem problem = Assert.Single(DemoPlan.ProblemsOf(DemoPlan.With(passage, instead)));
        Assert.Equal(path, problem.JsonPath);
        Assert.StartsWith(words, problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{\n  \"name\": ,\n}", "line 2, column 11: this is not JSON")]
    [InlineData("{ \"a\": 1, }", "line 1, column 11: this is not JSON")]
    [InlineData("{ // remark\n}", "line 1, column 3: this is not JSON")]
    [InlineData("{ \"a\": NaN }", "line 1, column 8: this is not JSON")]
    [InlineData("{ \"\u00e9\u00e9\": Infinity }", "line 1, column 9: this is not JSON")]
    [InlineData("", "line 1, column 1: this is not JSON")]
    public void What_is_not_JSON_is_told_with_line_and_column(string json, string words)
    {
        PlanProblem problem = Assert.Single(DemoPlan.ProblemsOf(json));
        Assert.Equal("$", problem.JsonPath);
        Assert.StartsWith(words, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Half_a_surrogate_pair_is_told_with_its_place() =>
        Assert.StartsWith("the text holds half a surrogate pair at character 7;", Assert.Single(DemoPlan.ProblemsOf("{\"a\":\"\ud800\"}")).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("[]", "an object is wanted here; this is a list.")]
    [InlineData("\"plan\"", "an object is wanted here; this is a text.")]
    [InlineData("null", "null is not accepted")]
    public void The_whole_text_must_be_an_object(string json, string words) =>
        Assert.StartsWith(words, Assert.Single(DemoPlan.ProblemsOf(json)).Message, StringComparison.Ordinal);

    [Fact]
    public void Deep_and_huge_texts_are_refused_without_a_crash()
    {
        Assert.Contains("more than 32 deep", Assert.Single(DemoPlan.ProblemsOf(new string('[', 1_000_000))).Message, StringComparison.Ordinal);
        string many = string.Join(',', Enumerable.Range(0, 5_000).Select(i => $"\"k{i}\":0"));
        var refusal = Assert.Throws<PlanFormatException>(() => StagingPlan.Parse($"{{{many}}}"));
        Assert.Equal((100, 4_903), (refusal.Problems.Length, refusal.MoreProblems));
        string[] lines = refusal.Message.Split('\n');
        Assert.Equal(22, lines.Length);
        Assert.Equal("5003 problems", lines[0]);
        Assert.Equal("  and 4983 more", lines[^1]);
    }

    [Fact]
    public void All_errors_of_a_record_come_together_even_where_a_part_of_it_is_missing()
    {
        string text = DemoPlan.With("\"openingCoefficient\": 0.8", "\"openingCoefficient\": 8")
            .Replace("\"unit\": \"MPa\"", "\"unit\": \"Pa\"", StringComparison.Ordinal)
            .Replace("\"flameTemperature\"", "\"flame\"", StringComparison.Ordinal);
        Assert.Equal(
            ["flame", "flameTemperature", "openingCoefficient", "strength"],
            DemoPlan.ProblemsOf(text).Select(p => p.JsonPath.Split('.')[^1]).Order());
    }

    [Fact]
    public void Several_errors_are_counted_and_told_a_line_each()
    {
        string text = DemoPlan.With("\"motorCount\": 1", "\"motorCount\": 0").Replace("\"unit\": \"MPa\"", "\"unit\": \"lbf\"", StringComparison.Ordinal);
        string[] lines = Assert.Throws<PlanFormatException>(() => DemoPlan.Parse(text)).Message.Split('\n');
        Assert.Equal("2 problems", lines[0]);
        Assert.StartsWith("  $.flight.stages[0].motorCount: 0 is outside the range", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("  $.flight.stages[1].ignition.gap.", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_that_comes_without_files_may_name_none() => Assert.All(
        Assert.Throws<PlanFormatException>(() => StagingPlan.Parse(DemoPlan.Text)).Problems,
        p => Assert.EndsWith("no files come with this text; give the curve as columns.", p.Message, StringComparison.Ordinal));

    [Fact]
    public void The_schema_may_be_named_for_editors() =>
        Assert.Equal(DemoPlan.Plan.Name, DemoPlan.Parse(DemoPlan.With("{", "{ \"$schema\": \"staging-plan.schema.json\",")).Name);

    [Fact]
    public void A_gap_is_modelled_as_the_plan_says_and_by_displacement_where_it_says_nothing()
    {
        Assert.IsType<GapModel.TwoZone>(GapOf(DemoPlan.Plan).Model);
        Assert.IsType<GapModel.WellStirred>(GapOf(DemoPlan.Parse(Modelled("{ \"kind\": \"wellStirred\" }"))).Model);
        var usual = Assert.IsType<GapModel.OneDimensional>(GapOf(DemoPlan.Parse(Modelled("{ \"kind\": \"oneDimensional\" }"))).Model);
        Assert.Equal(new GapModel.OneDimensional(), usual);
        var coarse = Assert.IsType<GapModel.OneDimensional>(GapOf(DemoPlan.Parse(Modelled("{ \"kind\": \"oneDimensional\", \"cells\": 60 }"))).Model);
        Assert.Equal(60, coarse.Cells);
    }

    [Theory]
    [InlineData("{ \"kind\": \"oneDimensionl\" }", ".model.kind", "'oneDimensional'")]
    [InlineData("{ \"kind\": \"magic\" }", ".model.kind", "twoZone, wellStirred, oneDimensional")]
    [InlineData("{ \"kind\": \"oneDimensional\", \"cells\": 12 }", ".model.cells", "20")]
    [InlineData("{ \"kind\": \"wellStirred\", \"cells\": 60 }", ".model.cells", "not a known key")]
    [InlineData("\"oneDimensional\"", ".model", "an object is wanted")]
    public void A_model_that_is_not_there_is_refused_with_those_that_are(string model, string path, string says)
    {
        PlanProblem problem = Assert.Single(DemoPlan.ProblemsOf(Modelled(model)));
        Assert.EndsWith(path, problem.JsonPath, StringComparison.Ordinal);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }

    private static GapIgnition GapOf(StagingPlan plan) =>
        Assert.IsType<GapIgnition>(Assert.IsType<StageIgnition.ByGap>(plan.Flight.Stages[1].Ignition).Gap);

    private static string Modelled(string model) => DemoPlan.With("\"holePressureCoefficient\"", $"\"model\": {model}, \"holePressureCoefficient\"");

    [Fact]
    public void Solver_numbers_may_be_left_out_and_physics_not()
    {
        string named = DemoPlan.With("\"holePressureCoefficient\"", "\"solver\": { \"maxSteps\": 1234 }, \"holePressureCoefficient\"");
        GapIgnition gap = GapOf(DemoPlan.Parse(named));
        Assert.Equal(1234, gap.Solver.MaxSteps);
        Assert.Equal(SolverOptions.ForGaps.RelativeTolerance, gap.Solver.RelativeTolerance);
    }

    [Fact]
    public void Own_atmospheres_laws_and_gaps_cannot_be_written()
    {
        StagingPlan plan = DemoPlan.Plan;
        StagingPlan foreign = plan with { Flight = plan.Flight with { Site = plan.Flight.Site with { Atmosphere = new Thin() } } };
        Assert.Contains("Thin", Assert.Throws<ArgumentException>(() => foreign.ToJson()).Message, StringComparison.Ordinal);
        StagingPlan magic = plan with { Flight = plan.Flight with { Stages = [plan.Flight.Stages[0], plan.Flight.Stages[1] with { Ignition = new StageIgnition.ByGap { Gap = new Magic() } }] } };
        Assert.Contains("Magic", Assert.Throws<ArgumentException>(() => magic.ToJson()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_in_place_of_a_file_is_told_in_a_short_message()
    {
        string text = " {\n  \"planVersion\": 1, " + new string('x', 100_000) + "}\n";
        string message = Assert.Throws<PlanFormatException>(() => StagingPlan.Read(text)).Message;
        Assert.EndsWith("...' is the text of a plan, not the name of a file; Parse reads a text.", message, StringComparison.Ordinal);
        Assert.InRange(message.Length, 100, 200);
    }

    [Fact]
    public void Files_are_UTF8_with_or_without_a_mark_and_nothing_else()
    {
        string folder = Directory.CreateTempSubdirectory("plans").FullName;
        try
        {
            foreach (string curve in Directory.EnumerateFiles(DemoPlan.Folder, "*.csv"))
                File.Copy(curve, Path.Combine(folder, Path.GetFileName(curve)));
            string path = Path.Combine(folder, "plan.json");
            File.WriteAllText(path, DemoPlan.Text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));
            Assert.Equal(DemoPlan.Plan.Name, StagingPlan.Read(path).Name);
            File.WriteAllBytes(path, [.. "{ \"name\": \""u8, 0xE9, .. "\" }"u8]);
            Assert.Equal($"{path}: the plan could not be read: it is not UTF-8 text.", Assert.Throws<PlanFormatException>(() => StagingPlan.Read(path)).Message);
            Assert.Single(Assert.Throws<PlanFormatException>(() => StagingPlan.Read(folder)).Message.Split('\n'));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private sealed record Thin : IAtmosphere
    {
        public double Floor_m => 0;

        public double Ceiling_m => 1;

        public AirSample At(double geometricAltitude_m) => default;
    }

    private sealed record Magic : IGapIgnition
    {
        public GapIgnitionResult Ignite(BurnThroughState state, CancellationToken cancellationToken = default) => throw new NotSupportedException();
    }
}
