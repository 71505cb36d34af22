using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The latest staging before the flight path has tilted too far.</summary>
internal static class StagingTilt
{
    /// <summary>Length of the intervals over which g/v is integrated by Simpson's rule [s].</summary>
    private const double Interval = 0.005;

    /// <summary>The latest ignition [s]; see <see cref="FlightRun.LatestIgnition"/>.</summary>
    public static Duration? LatestIgnition(FlightRun run, string upperStage, Angle tiltAtGuideExit, Angle maxTilt)
    {
        double start = Guard.In(tiltAtGuideExit, 0.1, 60, nameof(tiltAtGuideExit)).Radians;
        double limit = Guard.In(maxTilt, 0.1, 89, nameof(maxTilt)).Radians;
        FailureCase cold = run.FailureCases.FirstOrDefault(b => b.Stage == upperStage && b.Kind == FailureKind.UnlitAndJoined)
            ?? throw new ArgumentException($"The run has no case in which '{Excerpt.Of(upperStage)}' stays cold.", nameof(upperStage));
        if (!run.Main.HasHistory)
            throw new ArgumentException("The run keeps no trajectory.", nameof(run));
        double allowed = Math.Asinh(1 / Math.Tan(start)) - Math.Asinh(1 / Math.Tan(limit));
        BodyFlight coast = cold.Bodies[0];
        double parting = coast.Start.Seconds;
        // The cold stack leaves the guide at its own time, whether the upper stage was lit on the guide or not.
        if ((coast.Find(FlightEventKind.GuideExit) ?? run.Main.Find(FlightEventKind.GuideExit)) is not { } exit || exit.Time > coast.End)
            return null;
        double t = exit.Time.Seconds, end = coast.ApogeeTime?.Seconds ?? coast.End.Seconds;
        double rate = Rate(run, coast, parting, t);
        while (t < end)
        {
            double next = Math.Min(t + Interval, end), rateNext = Rate(run, coast, parting, next);
            double part = (next - t) / 6 * (rate + 4 * Rate(run, coast, parting, 0.5 * (t + next)) + rateNext);
            if (part >= allowed)
            {
                double at = t + (next - t) * Math.Max(0, allowed / part);
                return at >= parting ? Duration.FromSeconds(at) : null;
            }

            allowed -= part;
            (t, rate) = (next, rateNext);
        }

        return Duration.FromSeconds(end);
    }

    /// <summary>g/v [1/s].</summary>
    private static double Rate(FlightRun run, BodyFlight coast, double parting, double t)
    {
        FlightState state = (t < parting ? run.Main : coast).At(Duration.FromSeconds(t));
        double g = run.Plan.Site.Gravity.At(run.Plan.Site.Elevation + state.Height).MetersPerSecondSquared;
        return g / Math.Max(state.Velocity.MetersPerSecond, GravityTurn.Slowest);
    }
}
