using System.Reflection;
using System.Text.Json;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Hygiene.Sources;
using Staging.Core.Tests.Plans;
using Staging.Core.Tests.Samples;
using UnitsNet;

namespace Staging.Core.Tests.Reviews;

/// <summary>The page on the JSON of a review and of odds has every key that is written, and no other.</summary>
public class JsonKeyTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "guides", "review-json.md"));

    /// <summary>A gap whose products leave through a ring of wide holes below those at the nozzle.</summary>
    private static readonly StagingPlan VentedAway = TestPlans.Through(TestPlans.Lighting with
    {
        Vents = [Bench.Hole(Bench.Design.Tube, 12, 4) with { Station = Length.FromMillimeters(60) }, .. TestPlans.Lighting.Vents],
        Joint = Bench.Joint(400),
    });

    /// <summary>Holes of an outer wall that have no place.</summary>
    private static readonly StagingPlan NoPlace = TestPlans.Through(TestPlans.TwoWalls with
    {
        Jackets = [TestPlans.TwoWalls.Jackets[0] with { Openings = [TestPlans.TwoWalls.Jackets[0].Openings[0] with { Station = null }] }],
    });

    /// <summary>A throat so narrow that the chamber pressure leaves its range where the propellant burns faster.</summary>
    private static readonly StagingPlan Refusing = TestPlans.Through(StartingGaps.Bore18mm.Design with
    {
        Source = (GapSource.EndBurner)StartingGaps.Bore18mm.Design.Source with { NozzleThroatDiameter = Length.FromMillimeters(0.93) },
    });

    [Fact]
    public void Every_key_of_a_review_and_of_odds_stands_on_the_page_as_it_is_and_no_other()
    {
        var page = new KeyTable(Page);
        IEnumerable<StagingReview> reviews =
        [
            .. PlanFilesTests.Plans.Select(p => PlanFiles.Review(p.Data.Item1)),
            DemoPlan.Plan.Review(cases: 8), VentedAway.Review(cases: 0), NoPlace.Review(cases: 0),
        ];
        foreach (StagingReview review in reviews)
            Look(page, review.ToJson(), "review");
        foreach (StagingPlan plan in (StagingPlan[])[DemoPlan.Plan, Refusing])
            Look(page, plan.Odds(cases: 8).ToJson(), "odds");
        Assert.Empty(page.Wrong);
        Assert.Empty(page.NotSeen);
    }

    [Fact]
    public void Words_on_the_page_are_those_of_the_library()
    {
        string[] answers = Names<Verdict>(), outcomes = Cases(typeof(GapOutcome)), holding = Names<BracketVerdict>();
        var expected = new Dictionary<string, string[]>
        {
            ["review.verdict.answer"] = answers,
            ["review.verdict.stages[].answer"] = answers,
            ["review.gaps[].outcome"] = outcomes,
            ["review.gaps[].events[].kind"] = Names<GapEventKind>(),
            ["review.gaps[].build.advisedOutcome"] = outcomes,
            ["review.gaps[].bracket.lights"] = holding,
            ["review.gaps[].bracket.jointHolds"] = holding,
            ["review.gaps[].bracket.gasAlone"] = outcomes,
            ["review.gaps[].bracket.corners[].outcome"] = outcomes,
            ["review.failureCases[].kind"] = Names<FailureKind>(),
        };
        foreach (string body in (string[])["review.bodies[]", "review.failureCases[].bodies[]"])
        {
            expected[$"{body}.outcome"] = Cases(typeof(FlightOutcome));
            expected[$"{body}.events[].kind"] = Names<FlightEventKind>();
        }

        foreach (string finding in (string[])["review", "review.gaps[].build.advised[]", "review.gaps[].build.drawn[]"])
            expected[$"{finding}.findings[].severity"] = Names<FindingSeverity>();
        (string Path, string[] Words)[] told = [.. new KeyTable(Page).Words];
        Assert.Equal(expected.Keys.Order(StringComparer.Ordinal), told.Select(t => t.Path).Order(StringComparer.Ordinal));
        Assert.All(told, t => Assert.Equal(expected[t.Path].Order(StringComparer.Ordinal), t.Words.Order(StringComparer.Ordinal)));
    }

    [Theory]
    [InlineData("""{ "a": 1, "b": "x" }""", 0, 0)]
    [InlineData("""{ "a": null, "b": "y" }""", 0, 0)]
    [InlineData("""{ "a": "1", "b": "x" }""", 1, 0)]
    [InlineData("""{ "a": 1, "b": "z" }""", 1, 0)]
    [InlineData("""{ "a": 1, "b": null }""", 1, 0)]
    [InlineData("""{ "a": 1, "b": "x", "c": true }""", 1, 0)]
    [InlineData("""{ "a": 1 }""", 0, 1)]
    public void What_is_missing_on_the_page_is_caught_and_what_is_too_much(string json, int wrong, int notSeen)
    {
        var page = new KeyTable("# The whole: `root`\n| `a` | number or null | |\n| `b` | one of `x`, `y` | |\n");
        Look(page, json, "root");
        Assert.Equal((wrong, notSeen), (page.Wrong.Count(), page.NotSeen.Count()));
    }

    private static void Look(KeyTable page, string json, string root)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        page.Look(document.RootElement, root);
    }

    private static string[] Names<T>() where T : struct, Enum => [.. Enum.GetNames<T>().Select(JsonNamingPolicy.CamelCase.ConvertName)];

    private static string[] Cases(Type union) => [.. union.GetNestedTypes(BindingFlags.Public).Where(t => t.IsSubclassOf(union))
        .Select(t => JsonNamingPolicy.CamelCase.ConvertName(t.Name))];
}
