#region task-stays-cold
using Staging.Core.Flight;
using Staging.Core.Plans;
using UnitsNet;
#endregion

namespace BuilderTasks;

/// <summary>What happens if the upper stage does not light.</summary>
internal static class StaysCold
{
    public static void Run()
    {
        #region task-stays-cold
        FlightRun flight = StagingPlan.Read("demo/plan.json").Flight.Fly(); // invented; the failures are always flown too
        foreach (FailureCase failure in flight.FailureCases)
            Console.WriteLine(failure);
        Duration? latest = flight.LatestIgnition("sustainer", tiltAtGuideExit: Angle.FromDegrees(5), maxTilt: Angle.FromDegrees(30));
        Console.WriteLine($"at the latest {latest?.Seconds:F1} s after launch the path has tilted by 30 degrees");
        #endregion
    }
}
