using Staging.Core.Discharge;
using Staging.Core.Flight;
using Staging.Core.Gaps;
#region plan-review-odds
using Staging.Core.Plans;
using Staging.Core.Reviews;
#endregion
using Staging.Core.Tests.Plans;
using UnitsNet;

namespace Staging.Core.Tests.Reviews;

/// <summary>The lines a user writes with a plan, and two walks through the house: shown in the documentation, run here.</summary>
public class ReviewSnippets
{
    private static readonly string DemoFile = Path.Combine(DemoPlan.Folder, "plan.json");

    [Fact]
    public void A_plan_its_review_and_its_odds()
    {
        string planFile = DemoFile;
        #region plan-review-odds
        StagingPlan plan = StagingPlan.Read(planFile);
        Console.WriteLine(plan.Review());
        Odds odds = plan.Odds(cases: 100);
        Console.WriteLine(odds);
        Console.WriteLine(odds.WhatMatters());
        #endregion
        Assert.Equal(100, odds.Run.Cases);
    }

    [Fact]
    public void A_vent_hole_goes_from_text_to_outcome()
    {
        string path = DemoFile;
        #region walk-vent-hole
        StagingPlan plan = StagingPlan.Read(path);                               // Plans: JsonCursor, GapCodecs, QuantityCodec
        var ignition = (StageIgnition.ByGap)plan.Flight.Stages[1].Ignition;      // Flight: how a stage is lit
        var gap = (GapIgnition)ignition.Gap;                                     // Plans: answers Flight with a gap
        VentHoles drilled = gap.Design.Vents[0].Holes;                           // Gaps and Discharge: as built, checked
        GapRun run = plan.Review().Gaps[0].Run;                                  // flown: BurnThroughState, then GapProblem
        VentHoles flown = run.Problem.Design.Vents[0].Holes;                     // the same hole; GapToSi makes it SI numbers
        GapOutcome outcome = run.Outcome;                                        // LumpedSolver, RunEvents, OutcomeDiagnosis
        #endregion
        Assert.Equal(Length.FromMillimeters(5), drilled.Diameter);
        Assert.Equal(drilled, flown);
        Assert.True(outcome.IsLit);
        Assert.Equal(Length.FromMillimeters(2), Narrowed(2).Vents[0].Holes.Diameter);
    }

    [Fact]
    public void A_thrust_history_goes_from_table_to_apogee()
    {
        const string csv = "time_s,thrust_N\n0,0\n0.1,12\n0.8,9\n0.85,0\n";
        StagingPlan demo = DemoPlan.Plan;
        #region walk-thrust
        ThrustHistory thrust = ThrustHistory.FromCsv(new StringReader(csv));     // Motors: checked columns, equal by content
        Stage upper = demo.Flight.Stages[1];                                     // a stage carries its motor
        Stage changed = upper with { Motor = upper.Motor with { Thrust = thrust } };
        FlightPlan plan = demo.Flight with { Stages = [demo.Flight.Stages[0], changed] };
        FlightRun flight = plan.Fly();                                           // FlightToSi, FlightSimulation, BodyRecorder
        Length? apogee = flight.Apogee;                                          // BodyFlight of the uppermost stage
        #endregion
        Assert.NotNull(apogee);
        Assert.NotEqual(demo.Flight.Fly().Apogee, apogee);
    }

    private static GapDesign Narrowed(double diameter_mm)
    {
        int hole = DemoPlan.Text.IndexOf("\"vents\"", StringComparison.Ordinal);
        int at = DemoPlan.Text.IndexOf("\"diameter\"", hole, StringComparison.Ordinal);
        int end = DemoPlan.Text.IndexOf('}', at);
        StagingPlan plan = DemoPlan.Parse($"{DemoPlan.Text[..at]}\"diameter\": {{ \"value\": {diameter_mm}, \"unit\": \"mm\" }}{DemoPlan.Text[(end + 1)..]}");
        return ((GapIgnition)((StageIgnition.ByGap)plan.Flight.Stages[1].Ignition).Gap).Design;
    }
}
