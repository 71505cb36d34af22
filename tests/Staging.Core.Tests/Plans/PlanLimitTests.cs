using Staging.Core.Plans;

namespace Staging.Core.Tests.Plans;

/// <summary>Texts from elsewhere: bounded in size, work and memory, and what they hold is not printed raw.</summary>
public class PlanLimitTests
{
    private const string TooLong = "the text is longer than 4000000 characters.";

    [Theory]
    [InlineData("\"name\": \"booster\"", "\"name\": \"\\u001b[2Jbooster\"", "$.flight.stages[0].name", "the text holds a control character, \\u001b, as character 1; it may hold none, and no line breaks.")]
    [InlineData("invented: Invented", "invented: In\\nvented", "$.flight.stages[0].motor.provenance", "the text holds a control character, \\u000a, as character 13;")]
    public void Control_characters_in_texts_are_refused(string passage, string instead, string path, string words)
    {
        IReadOnlyList<PlanProblem> problems = DemoPlan.ProblemsOf(DemoPlan.Short.Replace(passage, instead, StringComparison.Ordinal));
        Assert.Equal(path, problems[0].JsonPath);
        Assert.StartsWith(words, problems[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Control_characters_are_refused_in_code_too_so_that_what_is_written_can_be_read()
    {
        Assert.StartsWith("Name: the text holds a control character, \\u001b, as character 4;", Assert.Throws<ArgumentException>(() => DemoPlan.Plan with { Name = "two\u001b[2J" }).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new Provenance { Source = "own", Locator = "p. 1\n", How = Evidence.Measured });
    }

    [Fact]
    public void A_text_of_more_than_four_million_characters_is_refused() =>
        Assert.Equal(TooLong, Assert.Single(DemoPlan.ProblemsOf(DemoPlan.Short + new string(' ', 4_000_000))).Message);

    [Fact]
    public void An_endless_thrust_history_is_left_at_the_limit()
    {
        using var endless = new Endless();
        PlanProblem problem = Assert.Throws<PlanFormatException>(() => StagingPlan.Parse(DemoPlan.Short, _ => endless)).Problems[0];
        Assert.Equal("booster-motor.csv: " + TooLong, problem.Message);
        Assert.InRange(endless.Given, 4_000_000, 10_000_000);
    }

    [Fact]
    public void One_gap_used_by_many_stages_is_cut_off_in_time()
    {
        string vents = string.Join(',', Enumerable.Repeat("{ \"station\": \"1 mm\" }", 50_000));
        string stages = string.Join(',', Enumerable.Repeat("{ \"ignition\": { \"kind\": \"byGap\", \"gap\": { \"startFrom\": \"a\" } } }", 20_000));
        var refusal = Assert.Throws<PlanFormatException>(() => StagingPlan.Parse(
            $$"""{ "gaps": { "a": { "startFrom": "bore18mm", "design": { "vents": [{{vents}}] } } }, "flight": { "stages": [{{stages}}] } }"""));
        Assert.Equal(100, refusal.Problems.Length);
        Assert.True(refusal.MoreProblems > 10_000);
    }

    [Fact]
    public void More_than_sixteen_sets_one_upon_the_other_are_refused()
    {
        string chain = string.Join(',', Enumerable.Range(0, 2_000).Select(i => $"\"g{i}\": {{ \"startFrom\": \"g{i + 1}\" }}"));
        Assert.Contains(
            Assert.Throws<PlanFormatException>(() => StagingPlan.Parse($"{{ \"gaps\": {{ {chain} }} }}")).Problems,
            p => p.Message == "more than 16 starting sets stand one upon the other.");
    }

    /// <summary>Looked up by name among all others, each gap would cost a look at every one of them: four times the memory for twice the gaps.</summary>
    [Fact]
    public void Twice_the_gaps_cost_twice_the_work()
    {
        Read(100);
        double few = Read(2_000), many = Read(4_000);
        Assert.InRange(many / few, 1.5, 2.5);

        static long Read(int count)
        {
            string gaps = string.Join(',', Enumerable.Range(0, count).Select(i => $"\"g{i}\": {{ \"startFrom\": \"{(i % 10 == 0 ? "bore18mm" : $"g{i - 1}")}\" }}"));
            string text = $"{{ \"gaps\": {{ {gaps} }} }}";
            long before = GC.GetAllocatedBytesForCurrentThread();
            Assert.Throws<PlanFormatException>(() => StagingPlan.Parse(text));
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }
    }

    [Theory]
    [InlineData("{ \"a\": 1, }", "a bracket closes where")]
    [InlineData("{ // remark\n}", "remarks have no place in a plan")]
    [InlineData("{ 'a': 1 }", "texts and keys stand in double quotes.")]
    [InlineData("{ \"a\": NaN }", "'N' cannot stand here")]
    [InlineData("{ \"a\": 1 \"b\": 2 }", "a comma or a colon is missing before this text.")]
    [InlineData("{ \"a\": 01 }", "this is not a number as JSON writes it")]
    [InlineData("{ \"a\": \"line\nbreak\" }", "a line break or another control character stands within a text.")]
    [InlineData("{ \"a\": ", "the text ends before its last bracket or quote is closed.")]
    [InlineData("", "the text is empty.")]
    public void What_is_not_JSON_is_told_in_plain_words(string json, string words)
    {
        string message = Assert.Single(DemoPlan.ProblemsOf(json)).Message;
        Assert.Contains("this is not JSON: " + words, message, StringComparison.Ordinal);
    }

    [Fact]
    public void Devices_and_links_are_not_read()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "devices and links of Linux");
        Assert.Contains("a device or a pipe", Assert.Throws<PlanFormatException>(() => StagingPlan.Read("/dev/zero")).Message, StringComparison.Ordinal);
        string folder = Directory.CreateTempSubdirectory("plans").FullName;
        try
        {
            string secret = Path.Combine(folder, "secret.txt"), plans = Directory.CreateDirectory(Path.Combine(folder, "plans")).FullName;
            File.WriteAllText(secret, "a-secret-word\n");
            File.WriteAllText(Path.Combine(plans, "plan.json"), DemoPlan.Short);
            File.CreateSymbolicLink(Path.Combine(plans, "booster-motor.csv"), secret);
            File.CreateSymbolicLink(Path.Combine(plans, "sustainer-motor.csv"), "/dev/zero");
            var refusal = Assert.Throws<PlanFormatException>(() => StagingPlan.Read(Path.Combine(plans, "plan.json")));
            Assert.Equal(2, refusal.Problems.Length);
            Assert.All(refusal.Problems, p => Assert.EndsWith("it is reached by a link, and links are not followed from a plan.", p.Message, StringComparison.Ordinal));
            Assert.DoesNotContain("a-secret-word", refusal.Message, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>A text without an end and without a line break.</summary>
    private sealed class Endless : TextReader
    {
        public long Given { get; private set; }

        public override int Read(char[] buffer, int index, int count)
        {
            buffer.AsSpan(index, count).Fill('0');
            Given += count;
            return count;
        }
    }
}
