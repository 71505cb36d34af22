using Staging.Core.Flight;

namespace Staging.Core.Validation;

internal static class FlownPlan
{
    /// <summary>Flies with the token of the running test.</summary>
    public static FlightRun Flown(this FlightPlan plan, FlightOptions? options = null) =>
        plan.Fly(options, cancellationToken: TestContext.Current.CancellationToken);
}
