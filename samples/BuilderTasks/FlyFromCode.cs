#region program-fly
using Staging.Core.Flight;
using Staging.Core.Plans;
using UnitsNet;
#endregion

namespace BuilderTasks;

/// <summary>A flight from code.</summary>
internal static class FlyFromCode
{
    public static void Run()
    {
        #region program-fly
        FlightPlan plan = StagingPlan.Read("demo/plan.json").Flight; // or put one together: its parts are records
        Stage sustainer = plan.Stages[1] with { StructureMass = Mass.FromGrams(35) };
        FlightRun flight = (plan with { Stages = [plan.Stages[0], sustainer] }).Fly();
        foreach (BodyFlight body in flight.Bodies)
            Console.WriteLine(body);
        FlightState state = flight.Main.At(Duration.FromSeconds(5));
        Console.WriteLine($"after 5 s: {state.Height.Meters:F0} m, {state.Velocity.MetersPerSecond:F0} m/s");
        #endregion
    }
}
