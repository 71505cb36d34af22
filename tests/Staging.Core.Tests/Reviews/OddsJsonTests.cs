using System.Text.Json;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Tests.Flight;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Plans;

namespace Staging.Core.Tests.Reviews;

/// <summary>Odds as JSON for other programs.</summary>
public class OddsJsonTests
{
    private static readonly Odds Few = DemoPlan.Plan.Odds(cases: 32, seed: 7);

    [Fact]
    public void It_tells_what_the_odds_tell()
    {
        using JsonDocument json = JsonDocument.Parse(Few.ToJson());
        JsonElement root = json.RootElement, all = root.GetProperty("everyStageLights"), margin = root.GetProperty("margin_K");
        Assert.Equal((32, 7), (root.GetProperty("cases").GetInt32(), root.GetProperty("seed").GetInt32()));
        Assert.Equal(Few.EveryStageLights.Hits, all.GetProperty("casesLit").GetInt64());
        Assert.Equal(Few.EveryStageLights.Estimate, all.GetProperty("share").GetDouble());
        Assert.Equal(Few.EveryStageLights.Wilson().Low, all.GetProperty("leastShareAt95").GetDouble());
        Assert.Equal(Few.EveryStageLights.Wilson().High, all.GetProperty("greatestShareAt95").GetDouble());
        Assert.Equal(Few.Margin.Percentile(5).Value, margin.GetProperty("p5").GetDouble());
        Assert.Equal(Few.Margin.Mean, margin.GetProperty("mean").GetDouble());
        JsonElement stage = Assert.Single(root.GetProperty("stages").EnumerateArray());
        Assert.Equal("sustainer", stage.GetProperty("stage").GetString());
        Assert.Equal(Few.Stages[0].Lights.Hits, stage.GetProperty("casesLit").GetInt64());
    }

    [Fact]
    public void What_matters_comes_strongest_first()
    {
        using JsonDocument json = JsonDocument.Parse(Few.ToJson());
        RankedInput[] ranked = [.. Few.WhatMatters().Inputs];
        JsonElement[] told = [.. json.RootElement.GetProperty("whatMatters").EnumerateArray()];
        Assert.Equal(ranked.Select(r => r.Input.Name), told.Select(t => t.GetProperty("input").GetString()));
        Assert.Equal(ranked.Select(r => r.Correlation), told.Select(t => t.GetProperty("rankCorrelation").GetDouble()));
    }

    /// <summary>The middle stage stays cold behind a closed gap, so no case has a margin of the one above it: null, not zero.</summary>
    [Fact]
    public void What_no_case_has_is_null()
    {
        StageIgnition closed = Through(TestPlans.Lighting with { Vents = [], Joint = Bench.Joint(1) }), open = Through(TestPlans.Lighting);
        StagingPlan three = TestPlans.Of(TestFlights.Plan(TestFlights.Booster(), TestFlights.Booster("middle", closed), TestFlights.Sustainer(open)));
        using JsonDocument json = JsonDocument.Parse(three.Odds(cases: 4).ToJson());
        JsonElement[] stages = [.. json.RootElement.GetProperty("stages").EnumerateArray()];
        Assert.Equal([0, 0], stages.Select(s => s.GetProperty("casesLit").GetInt32()));
        Assert.Equal(4, stages[0].GetProperty("margin_K").GetProperty("cases").GetInt32());
        Assert.Equal(JsonValueKind.Null, stages[1].GetProperty("margin_K").ValueKind);
    }

    private static StageIgnition.ByGap Through(GapDesign design) => new() { Gap = new GapIgnition { Design = design, HolePressureCoefficient = 0 } };
}
