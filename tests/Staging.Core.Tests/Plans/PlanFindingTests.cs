using Staging.Core.Plans;
using Staging.Core.Reviews;

namespace Staging.Core.Tests.Plans;

/// <summary>What a check says of a plan that was read: in the keys of its text, with the value as written and the file.</summary>
public class PlanFindingTests
{
    public static TheoryData<string, string, string, string, string?> Findings => new()
    {
        // passage of the short demo, what stands there instead, code, path, the value as written
        { "\"116.5 mm\"", "\"12.1 cm\"", "GAP001", "flight.stages[1].ignition.gap.design.vents[0].station", "12.1 cm" },
        { "\"116.5 mm\"", "{ \"value\": 119, \"unit\": \"mm\" }", "GAP010", "flight.stages[1].ignition.gap.design.vents[0].station", "119 mm" },
        { "\"count\": 2", "\"count\": 100", "GAP002", "flight.stages[1].ignition.gap.design.vents[0].holes.count", "100" },
        { "\"120 mm\" },", "\"120 mm\" }, \"joint\": { \"coupler\": { \"slidingForce\": \"21 N\" } },", "GAP004", "flight.stages[1].ignition.gap.design.joint.coupler.slidingForce", "21 N" },
        { "\"120 mm\" },", "\"120 mm\" }, \"joint\": { \"coupler\": { \"breakawayForce\": \"3 N\" } },", "GAP004", "flight.stages[1].ignition.gap.design.joint.coupler.slidingForce", "16 N" },
        { "\"propellantMass\": \"12 g\"", "\"propellantMass\": \"0.022 kg\"", "FLT004", "flight.stages[0].motor.propellantMass", "0.022 kg" },
        { "\"layout\": { \"holeCount\": 2 }", "\"layout\": { \"holeCount\": 2, \"land\": \"20 cm\" }", "SIZ001", "flight.stages[1].ignition.gap.layout.land", "20 cm" },
        { "\"layout\": { \"holeCount\": 2 }", "\"layout\": { \"holeCount\": 2, \"wallThickness\": \"4 cm\" }", "SIZ006", "flight.stages[1].ignition.gap.layout.wallThickness", "4 cm" },
        { "\"kind\": \"byMotorDelay\"", "\"kind\": \"atSeparation\", \"lag\": \"1 s\"", "FLT011", "flight.stages[1].recovery.deployment", null },
    };

    [Theory]
    [MemberData(nameof(Findings))]
    public void A_finding_names_the_key_and_the_value_as_written(string passage, string instead, string code, string path, string? written)
    {
        Assert.Contains(passage, DemoPlan.Short, StringComparison.Ordinal);
        StagingPlan plan = DemoPlan.Parse(DemoPlan.Short.Replace(passage, instead, StringComparison.Ordinal));
        ModelFinding finding = Assert.Single(plan.Check(), f => f.Code == code);
        Assert.Equal((path, written, null), (finding.Path, finding.Written, finding.File));
    }

    [Fact]
    public void Errors_of_a_file_name_it_and_come_all_at_once()
    {
        string folder = Directory.CreateTempSubdirectory("plans").FullName;
        try
        {
            foreach (string curve in Directory.EnumerateFiles(DemoPlan.Folder, "*.csv"))
                File.Copy(curve, Path.Combine(folder, Path.GetFileName(curve)));
            string path = Path.Combine(folder, "own.json");
            File.WriteAllText(path, DemoPlan.Short.Replace("\"116.5 mm\"", "\"130 mm\"", StringComparison.Ordinal).Replace("\"21.4 g\"", "\"11 g\"", StringComparison.Ordinal));
            string[] lines = Assert.Throws<InvalidModelException>(() => StagingPlan.Read(path).Review()).Message.Split('\n');
            Assert.Equal(2, lines.Length);
            Assert.Equal($"FLT004 {path}: flight.stages[0].motor.propellantMass (12 g): The propellant weighs 12 g, the loaded motor 11 g; the propellant must weigh less.", lines[0]);
            Assert.StartsWith($"GAP001 {path}: flight.stages[1].ignition.gap.design.vents[0].station (130 mm): ", lines[1], StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Theory]
    [InlineData("\"length\": \"120 mm\"", "\"length\": \"120 mm\"", "{ \"holeCount\": 2, \"land\": \"20 cm\" }", "SIZ001")]
    [InlineData("\"length\": \"120 mm\"", "\"length\": \"1 mm\"", "{ \"holeCount\": 2 }", "SIZ001")]
    [InlineData("\"length\": \"120 mm\"", "\"length\": \"120 mm\"", "{ \"holeCount\": 100 }", null)]
    public void A_layout_that_cannot_be_drilled_is_a_warning_and_the_flight_goes_on(string passage, string instead, string layout, string? code)
    {
        string text = DemoPlan.Short.Replace(passage, instead, StringComparison.Ordinal)
            .Replace("[{ \"station\": \"116.5 mm\", \"holes\": { \"diameter\": \"5 mm\", \"wallThickness\": \"0.5 mm\", \"count\": 2 } }]", "[]", StringComparison.Ordinal)
            .Replace("\"layout\": { \"holeCount\": 2 }", "\"layout\": " + layout, StringComparison.Ordinal);
        StagingReview review = DemoPlan.Parse(text).Review();
        Assert.Equal(code is null ? [] : [code], review.Findings.Where(f => f.Code.StartsWith("SIZ", StringComparison.Ordinal)).Select(f => f.Code));
        Assert.All(review.Findings, f => Assert.NotEqual(FindingSeverity.Error, f.Severity));
        Assert.Single(review.Gaps);
    }

    [Fact]
    public void A_plan_changed_in_code_is_told_in_code()
    {
        StagingPlan read = DemoPlan.Parse(DemoPlan.Short.Replace("\"116.5 mm\"", "\"130 mm\"", StringComparison.Ordinal));
        ModelFinding finding = Assert.Single((read with { Name = "changed" }).Check(), f => f.Code == "GAP001");
        Assert.Equal(("Flight.Stages[1].Ignition.Gap.Design.Vents[0].Station", null), (finding.Path, finding.Written));
    }
}
