#region program-csv
using Staging.Core.Plans;
using Staging.Core.Reviews;
using UnitsNet;
#endregion

namespace BuilderTasks;

/// <summary>The course of a gap and of a body as comma-separated values.</summary>
internal static class ColumnsAsCsv
{
    public static void Run()
    {
        #region program-csv
        StagingReview review = StagingPlan.Read("demo/plan.json").Review(cases: 0);
        using (StreamWriter file = File.CreateText("gap.csv"))
            review.Gaps[0].Run.Sample(Duration.FromMicroseconds(100)).WriteCsv(file);
        using (StreamWriter file = File.CreateText("flight.csv"))
            review.Flight.Main.Sample(Duration.FromMilliseconds(10)).WriteCsv(file);
        Console.WriteLine(File.ReadLines("flight.csv").First());
        #endregion
    }
}
