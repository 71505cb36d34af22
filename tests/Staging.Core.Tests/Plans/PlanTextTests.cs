using System.Text.Json;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Reviews;

namespace Staging.Core.Tests.Plans;

public class PlanTextTests
{
    [Fact]
    public void A_plan_written_and_read_flies_the_same()
    {
        StagingPlan plan = DemoPlan.Plan, again = DemoPlan.Parse(plan.ToJson());
        Assert.Equal(plan.ToJson(), again.ToJson());
        Assert.Equal(plan.Review(cases: 0).Flight.Apogee!.Value.Meters, again.Review(cases: 0).Flight.Apogee!.Value.Meters);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Plans_made_in_code_make_the_round_trip(bool closed)
    {
        StagingPlan plan = TestPlans.Through(closed ? TestPlans.Lighting with { Vents = [], Joint = Bench.Joint(12.345678901234567) } : TestPlans.Lighting, -0.12);
        string text = plan.ToJson();
        StagingPlan again = DemoPlan.Parse(text);
        Assert.Equal(text, again.ToJson());
        Assert.Equal(plan, again);
    }

    [Theory]
    [InlineData("\"bore\"", "\"boree\"", "$.flight.stages[1].ignition.gap.design.tube.boree", "'boree' is not a known key here; did you mean 'bore', which is missing? Accepted: ")]
    [InlineData("\"unit\": \"MPa\"", "\"units\": \"MPa\"", "$.flight.stages[1].ignition.gap.design.source.strength.units", "'units' is not a known key here; did you mean 'unit', which is missing? Accepted: ")]
    [InlineData("\"kind\": \"byGap\"", "\"knd\": \"byGap\"", "$.flight.stages[1].ignition.knd", "'knd' is not a known key here; did you mean 'kind', which is missing?")]
    [InlineData("\"kind\": \"byGap\"", "\"kinds\": \"byGap\"", "$.flight.stages[1].ignition.kinds", "'kinds' is not a known key here; did you mean 'kind', which is missing?")]
    [InlineData("\"motorCount\": 1,", "\"motorCounts\": 1, \"motorCount\": 1,", "$.flight.stages[0].motorCounts", "'motorCounts' is not a known key here; did you mean 'motorCount'? Accepted: ")]
    [InlineData("\"motorCount\": 1,", "\"motorCount\": 1, \"paralelMotors\": 1,", "$.flight.stages[0].paralelMotors", "'paralelMotors' is not a known key here; did you mean 'parallelMotors'? Accepted: ")]
    public void A_misspelt_key_is_told_once_with_the_one_it_is_meant_to_be(string passage, string instead, string path, string words)
    {
        PlanProblem problem = Assert.Single(DemoPlan.ProblemsOf(DemoPlan.With(passage, instead)));
        Assert.Equal(path, problem.JsonPath);
        Assert.StartsWith(words, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_key_that_is_missing_is_told_beside_one_that_is_unlike_it() =>
        Assert.Equal(
            ["$.colour", "$.siteSize"],
            DemoPlan.ProblemsOf(DemoPlan.With("\"siteSize\": { \"value\": 400, \"unit\": \"m\" },", "\"colour\": 1,")).Select(p => p.JsonPath));

    [Fact]
    public void A_repeated_key_is_refused() =>
        Assert.Contains(DemoPlan.ProblemsOf(DemoPlan.With("\"motorCount\": 1,", "\"motorCount\": 1, \"motorCount\": 2,")), p => p.JsonPath == "$.flight.stages[0].motorCount");

    [Theory]
    [InlineData("{ \"value\": 18, \"unit\": \"mm\" },\n                \"length\"", "{ \"value\": 1800, \"unit\": \"mm\" },\n                \"length\"", "1800 mm", "between 2 and 200 mm")]
    [InlineData("{ \"value\": 20, \"unit\": \"N\" }", "{ \"value\": -1, \"unit\": \"N\" }", "-1 N", "between 0 and 2000 N")]
    [InlineData("\"particleEfficiency\": 0.25", "\"particleEfficiency\": 1.5", "1.5", "between 0 and 1")]
    public void A_value_outside_its_range_is_named_with_value_unit_and_range(string passage, string instead, string value, string range)
    {
        PlanProblem problem = Assert.Single(DemoPlan.ProblemsOf(DemoPlan.With(passage, instead)));
        Assert.Contains(value, problem.Message, StringComparison.Ordinal);
        Assert.Contains(range, problem.Message, StringComparison.Ordinal);
        Assert.StartsWith("$.flight.stages[1].ignition.gap.design.", problem.JsonPath, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"unit\": \"MPa\"", "\"unit\": \"furlong\"")]
    [InlineData("{ \"value\": 5, \"unit\": \"MPa\" }", "5")]
    [InlineData("{ \"value\": 5, \"unit\": \"MPa\" }", "{ \"value\": 5 }")]
    [InlineData("{ \"value\": 5, \"unit\": \"MPa\" }", "{ \"value\": \"5\", \"unit\": \"MPa\" }")]
    public void A_quantity_without_a_unit_of_its_kind_is_refused(string passage, string instead) =>
        Assert.All(DemoPlan.ProblemsOf(DemoPlan.With(passage, instead)), p => Assert.Contains("strength", p.JsonPath, StringComparison.Ordinal));

    [Fact]
    public void Every_problem_is_reported_at_once()
    {
        string text = DemoPlan.With("\"motorCount\": 1", "\"motorCount\": 0").Replace("\"unit\": \"MPa\"", "\"unit\": \"lbf\"", StringComparison.Ordinal);
        Assert.True(DemoPlan.ProblemsOf(text).Count >= 2);
    }

    [Fact]
    public void What_is_not_JSON_is_refused_with_line_and_column() =>
        Assert.Contains("line 2, column", Assert.Single(DemoPlan.ProblemsOf("{\n  \"name\": ,\n}")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_fault_in_a_thrust_curve_is_told_with_file_and_line()
    {
        var fault = Assert.Throws<PlanFormatException>(() => StagingPlan.Parse(
            DemoPlan.Text,
            name => new StringReader(name.StartsWith("booster", StringComparison.Ordinal) ? "time_s,thrust_N\n0,0\n0.5,abc\n" : File.ReadAllText(Path.Combine(DemoPlan.Folder, name)))));
        PlanProblem problem = Assert.Single(fault.Problems);
        Assert.Contains("booster-motor.csv", problem.Message, StringComparison.Ordinal);
        Assert.Contains("3", problem.Message, StringComparison.Ordinal);
        Assert.Contains("abc", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_file_is_one_line()
    {
        string message = Assert.Throws<PlanFormatException>(() => StagingPlan.Read(Path.Combine(DemoPlan.Folder, "none.json"))).Message;
        Assert.DoesNotContain('\n', message);
        Assert.Contains("none.json", message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"name\": \"booster\"", "\"\\ud800\": \"booster\"")]
    [InlineData("\"thrustHistoryFile\"", "\"\\ud800\"")]
    [InlineData("\"kind\": \"atLaunch\"", "\"\\ud800\": \"atLaunch\"")]
    [InlineData("\"name\": \"booster\"", "\"name\": \"\\ud800\"")]
    public void Half_a_character_is_refused(string passage, string instead) => Assert.NotEmpty(DemoPlan.ProblemsOf(DemoPlan.With(passage, instead)));

    [Fact]
    public void Deep_nesting_is_refused_not_a_crash() =>
        Assert.NotEmpty(DemoPlan.ProblemsOf(new string('[', 100_000)));

    [Fact]
    public void Any_cut_of_the_text_is_a_plan_or_a_refusal()
    {
        for (int length = 0; length < DemoPlan.Text.Length; length += 37)
            Assert.Throws<PlanFormatException>(() => DemoPlan.Parse(DemoPlan.Text[..length]));
    }

    [Fact]
    public void Any_change_of_one_value_is_a_plan_or_a_refusal()
    {
        string[] instead = ["null", "true", "-1", "1e308", "\"\"", "[]", "{}", "0"];
        int at = 0, tried = 0;
        while ((at = DemoPlan.Text.IndexOf("\": ", at, StringComparison.Ordinal)) >= 0)
        {
            at += 3;
            int end = DemoPlan.Text.IndexOfAny([',', '\n', '}'], at);
            string text = DemoPlan.Text[..at] + instead[tried++ % instead.Length] + DemoPlan.Text[end..];
            try
            {
                DemoPlan.Parse(text);
            }
            catch (PlanFormatException refusal)
            {
                Assert.NotEmpty(refusal.Message);
            }
        }

        Assert.True(tried > 100);
    }

    [Fact]
    public void A_review_is_written_as_JSON_that_others_can_read()
    {
        StagingReview review = DemoPlan.Plan.Review(cases: 0);
        using JsonDocument json = JsonDocument.Parse(review.ToJson());
        Assert.True(json.RootElement.GetProperty("everyStageLightsNominally").GetBoolean());
        Assert.Equal("lit", json.RootElement.GetProperty("gaps")[0].GetProperty("outcome").GetString());
        Assert.Equal(review.Flight.Apogee!.Value.Meters, json.RootElement.GetProperty("apogee_m").GetDouble());
        Assert.Equal(review.Cautions.Length, json.RootElement.GetProperty("cautions").GetArrayLength());
        Assert.Equal(4, json.RootElement.GetProperty("failureCases").GetArrayLength());
        JsonElement gap = json.RootElement.GetProperty("gaps")[0];
        Assert.Equal(review.Gaps[0].Run.Outcome.Time.Seconds, gap.GetProperty("decidedAt_s").GetDouble());
        Assert.Equal(review.Gaps[0].Advice!.Holes!.Exact.Diameter.Meters, gap.GetProperty("holeDiameter_m").GetDouble());
        Assert.Equal(review.Gaps[0].Advice!.Holes!.Below!.Drill.Label, gap.GetProperty("drills")[0].GetProperty("label").GetString());
    }
}
