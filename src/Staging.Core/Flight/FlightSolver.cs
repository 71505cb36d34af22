using System.Collections.Immutable;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>Flies a plan.</summary>
public static class FlightSolver
{
    /// <summary>
    /// Flies a plan from ignition until everything is on the ground, and every branch in which a staging fails. A pure function: the same plan
    /// and options give the same numbers.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">How to compute; null takes <see cref="FlightOptions.Default"/>.</param>
    /// <param name="progress">Told after each flight of the run, in order, on the calling thread; null tells nobody.</param>
    /// <param name="cancellationToken">Stops the run.</param>
    /// <returns>The run; physics or numerics that end a body's flight early are outcomes in it, not exceptions.</returns>
    /// <exception cref="InvalidModelException"><see cref="FlightPlan.Check"/> reports an error.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static FlightRun Fly(
        this FlightPlan plan, FlightOptions? options = null, IProgress<SolveProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        options ??= FlightOptions.Default;
        InvalidModelException.ThrowOnError(plan.Check());
        LoweredPlan lowered = FlightLowering.Lower(plan);
        var flier = new Flier(lowered, options, cancellationToken);
        ImmutableArray<BodyFlight> bodies = Lift(plan, lowered, flier.FlyNominal());
        var branches = ImmutableArray.CreateBuilder<FlightBranch>();
        int flights = options.Scope == FlightScope.Everything ? 1 + 2 * flier.Stagings.Count : 1;
        Report(progress, bodies, 1, flights);
        if (options.Scope == FlightScope.Everything)
        {
            foreach (StagingLog staging in flier.Stagings)
            {
                foreach (bool parts in (ReadOnlySpan<bool>)[false, true])
                {
                    ImmutableArray<BodyFlight> failed = Lift(plan, lowered, flier.FlyBranch(staging, new BranchOrder(staging.Stage, parts)));
                    branches.Add(new FlightBranch(plan.Stages[staging.Stage].Name, parts ? BranchKind.UnlitAndParted : BranchKind.UnlitAndJoined, failed));
                    Report(progress, failed, 1 + branches.Count, flights);
                }
            }
        }

        return new FlightRun(plan, options, bodies, [.. flier.Stagings.Select(s => StagingReport.From(plan, s))], branches.ToImmutable(), flier.Statistics);
    }

    private static ImmutableArray<BodyFlight> Lift(FlightPlan plan, LoweredPlan lowered, List<BodyLog> logs)
    {
        var bodies = ImmutableArray.CreateBuilder<BodyFlight>(logs.Count);
        foreach (BodyLog log in logs)
            bodies.Add(new BodyFlight(plan, lowered, log));
        return bodies.MoveToImmutable();
    }

    private static void Report(IProgress<SolveProgress>? progress, ImmutableArray<BodyFlight> bodies, int done, int flights) =>
        progress?.Report(new SolveProgress(Duration.FromSeconds(bodies.Max(b => b.End.Seconds)), (double)done / flights));
}
