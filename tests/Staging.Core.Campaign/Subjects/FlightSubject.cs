using Staging.Core.Campaign.Drawing;
using Staging.Core.Campaign.Oracle;
using Staging.Core.Flight;
using UnitsNet;

namespace Staging.Core.Campaign.Subjects;

/// <summary>One flight of one to four stages, lit by contact or electronics, with its failure cases.</summary>
internal sealed class FlightSubject : ISubject
{
    public string Name => "flights";

    public string Steps => "steps of the solver over all bodies and failure cases, at most a million a phase";

    public Action<Facts> Make(Draws draws)
    {
        FlightPlan plan = FlightDraws.Plan(draws, 1, _ => null);
        var options = new FlightOptions
        {
            LateIgnition = draws.Choice("late-ignition", 4) == 1
                ? null
                : Duration.FromSeconds(draws.Number("late", new(1, 0.2, 3, 1e-3, 100))),
            LatestTime = Duration.FromSeconds(draws.Number("latest", new(3600, 600, 7200, 1, 100_000))),
        };
        return facts => FlightPromises.Keep(plan.Fly(options), facts);
    }
}
