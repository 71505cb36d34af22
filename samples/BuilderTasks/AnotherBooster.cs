#region task-another-booster
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
using UnitsNet;
#endregion
using Staging.Core;

namespace BuilderTasks;

/// <summary>The booster is changed for another.</summary>
internal static class AnotherBooster
{
    /// <summary>What goes into the design of the gap in a plan.</summary>
    public const string Lines = """
        "source": {
          "grainDiameter": "12 mm",
          "burntLength": "34 mm",
          "nozzleThroatDiameter": "2.8 mm",
          "provenance": "invented: another booster; strength and delay as before"
        },
        """;

    public static void Run()
    {
        #region task-another-booster
        GapProblem gap = StagingPlan.Read("demo/plan.json").GapBelow("sustainer"); // invented
        GapSource.EndBurner other = (GapSource.EndBurner)gap.Design.Source with
        {
            GrainDiameter = Length.FromMillimeters(12),
            BurntLength = Length.FromMillimeters(34),
            NozzleThroatDiameter = Length.FromMillimeters(2.8),
        };
        Console.WriteLine(other.BurnThrough());
        Console.WriteLine($"holes as drilled: {gap.With(source: other).Solve().Outcome}");
        Console.WriteLine(gap.With(source: other).SizeVents(new VentLayout { HoleCount = 2 }));
        #endregion
    }

    /// <summary>The plan with these lines and nothing else changed.</summary>
    public static void Check()
    {
        string text = File.ReadAllText("demo/plan.json").Replace("\"design\": {", "\"design\": {" + Lines, StringComparison.Ordinal);
        foreach (ModelFinding finding in StagingPlan.Parse(text, name => File.OpenText(Path.Combine("demo", name))).Check())
            Console.WriteLine(finding);
    }
}
