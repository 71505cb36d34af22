#region task-joint-slips
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
using Staging.Core.Studies;
using UnitsNet;
#endregion

namespace BuilderTasks;

/// <summary>The vents are drilled and the joint holds less than the plan says.</summary>
internal static class JointSlips
{
    /// <summary>What goes into the design of the gap in a plan.</summary>
    public const string Line = """
        "joint": { "coupler": { "breakawayForce": "8 N", "slidingForce": "6.4 N" } },
        """;

    public static void Run()
    {
        #region task-joint-slips
        StagingPlan plan = StagingPlan.Read("demo/plan.json"); // invented
        GapQuestion drilled = plan.QuestionBelow("sustainer"); // flies the plan to that gap
        Length gap = drilled.Problem.Design.Tube.Length;
        Area vents = drilled.Problem.Design.Vents[0].Holes.TotalArea;

        GapQuestion loose = drilled with { Problem = drilled.Problem.With(breakaway: Force.FromNewtons(8), sliding: Force.FromNewtons(6.4)) };
        Console.WriteLine($"as measured, 8 N: {loose.Problem.Solve().Outcome}");
        Console.WriteLine($"with the holes as drilled: {drilled.MinRetention(gap, vents, Axis.Even("breakaway", "N", 4, 60, 15))}");
        Console.WriteLine($"with the joint as it is: {loose.VentWindow(gap, Axis.Factors("vent area", "mm2", 10, 1000, 11))}");
        Console.WriteLine(loose.Problem.SizeVents(new VentLayout { HoleCount = 2 }));
        #endregion
    }

    /// <summary>The verdict on the plan with this line and nothing else changed.</summary>
    public static void Check()
    {
        string text = File.ReadAllText("demo/plan.json").Replace("\"design\": {", "\"design\": {" + Line, StringComparison.Ordinal);
        Console.WriteLine(StagingPlan.Parse(text, name => File.OpenText(Path.Combine("demo", name))).Review().Stages[0]);
    }
}
