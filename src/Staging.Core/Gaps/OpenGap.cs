using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// The gap after its joint has opened: it bleeds down through an annulus that soon is as wide as the tube. Chamber and gap then follow the outside
/// within microseconds while the bodies part over milliseconds, so the step is that of a method for stiff problems.
/// </summary>
internal static class OpenGap
{
    /// <summary>Follows the gap from where the joint opened.</summary>
    /// <param name="p">The gap.</param>
    /// <param name="options">How to integrate.</param>
    /// <param name="opened">The moment of opening.</param>
    /// <param name="stops">Known times [s], rising; the last is the horizon.</param>
    /// <param name="sink">Receives the steps.</param>
    /// <param name="spent">Whether it ended because the gap was spent.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <returns>Where it ended: the time asked for was over, the gap was spent, or the horizon was reached.</returns>
    public static GapEnd Follow(
        GapParameters p, SolverOptions options, GapEnd opened, double[] stops, IStepSink sink, out bool spent, CancellationToken cancel)
    {
        var integrator = new Integrator<Rodas43>(options, GapLowering.Scales(p)) { Time = opened.Time };
        opened.State.CopyTo(integrator.State);
        double last = Math.Min(opened.Time + p.AfterOpening, p.Horizon);
        PhaseEnd end = PhaseEnd.StopTime;
        foreach (double stop in stops.Where(t => t > opened.Time && t < last).Append(last))
        {
            var system = new GapSystem(p, JointPhase.Open);
            end = integrator.Run(ref system, stop, sink, cancel);
            if (end != PhaseEnd.StopTime)
                break;
        }

        spent = end == PhaseEnd.Event;
        return new GapEnd(integrator.Time, integrator.State.ToArray(), opened.Statistics + integrator.Statistics, integrator.Failure);
    }
}
