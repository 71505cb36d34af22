using System.Collections.Immutable;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Flight;

/// <content>Flies the plan, and chooses a delay by flying it.</content>
public sealed partial record FlightPlan
{
    /// <summary>
    /// Flies the plan from ignition until everything is on the ground, and every case in which a staging fails. A pure
    /// function: the same plan and options give the same numbers.
    /// </summary>
    /// <param name="options">How to compute; null takes <see cref="FlightOptions.Default"/>.</param>
    /// <param name="progress">Told after each flight of the run, in order, on the calling thread; may be null.</param>
    /// <param name="cancellationToken">Stops the run.</param>
    /// <returns>
    /// The run; physics or numerics that end a body's flight early are outcomes in it, not exceptions.
    /// </returns>
    /// <exception cref="InvalidModelException"><see cref="Check"/> reports an error.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public FlightRun Fly(
        FlightOptions? options = null, IProgress<SolveProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        options ??= FlightOptions.Default;
        InvalidModelException.ThrowOnError(Check());
        PlanParameters parameters = FlightToSi.ToSi(this);
        var simulation = new FlightSimulation(parameters, options, cancellationToken);
        ImmutableArray<BodyFlight> bodies = FromSi(parameters, simulation.FlyNominal());
        ImmutableArray<FailureCase> failureCases = FlyFailures(parameters, options, simulation, bodies, progress);
        return new FlightRun(this, options, bodies, [.. simulation.Stagings.Select(s => new StagingReport(this, s))], failureCases,
            simulation.Statistics);
    }

    /// <summary>
    /// Flies the uppermost stage once without ejection and reads, for each delay offered, its speed and height when
    /// the charge fires. One flight serves all delays, because nothing changes before the charge, and the delay of the
    /// uppermost motor does not matter.
    /// </summary>
    /// <param name="delaysOnOffer">Delays to be had [s], 0 to 100 s each.</param>
    /// <param name="options">How to compute; null takes the defaults.</param>
    /// <param name="cancellationToken">Stops the run.</param>
    /// <returns>
    /// The result of each delay, the slowest ejection first; empty where the uppermost stage never lit or had no apogee
    /// after burnout.
    /// </returns>
    /// <exception cref="InvalidModelException">The plan does not hang together.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A delay outside its range.</exception>
    public ImmutableArray<DelayOption> ChooseDelay(
        EquatableArray<Duration> delaysOnOffer, FlightOptions? options = null, CancellationToken cancellationToken = default)
    {
        foreach (Duration delay in delaysOnOffer)
            Guard.In(delay, 0, 100, nameof(delaysOnOffer));
        InvalidModelException.ThrowOnError(Check());
        Stage top = Stages[^1] with { Recovery = Recovery.Ballistic };
        FlightPlan bare = this with { Stages = Stages.Items.SetItem(Stages.Length - 1, top) };
        BodyFlight flight = bare.Fly((options ?? FlightOptions.Default) with { Scope = FlightScope.UppermostStage, KeepTracks = true },
            cancellationToken: cancellationToken).Main;
        if (flight.Find(FlightEventKind.Ignition, top.Name) is not { } ignition || flight.ApogeeTime is not { } apogee)
            return [];
        // Delays count from the end of the main motor's own curve, whatever burns in parallel.
        Duration burnout = ignition.Time + top.Motor.Thrust.BurnTime;
        return apogee < burnout ? [] : DelayOption.All(flight, burnout.Seconds, apogee.Seconds, delaysOnOffer);
    }

    private ImmutableArray<FailureCase> FlyFailures(
        PlanParameters parameters, FlightOptions options, FlightSimulation simulation, ImmutableArray<BodyFlight> nominal,
        IProgress<SolveProgress>? progress)
    {
        var scenarios = new List<(BodyState Start, FailureScenario Scenario)>();
        if (options.Scope == FlightScope.Everything)
        {
            foreach (StagingRecorder staging in simulation.Stagings)
            {
                scenarios.Add((staging.Start, new FailureScenario(staging.Stage, FailureKind.UnlitAndJoined, 0)));
                scenarios.Add((staging.Start, new FailureScenario(staging.Stage, FailureKind.UnlitAndParted, 0)));
                if (options.LateIgnition is { } late && staging.Lit)
                    scenarios.Add((staging.Start, new FailureScenario(staging.Stage, FailureKind.LitLate, late.Seconds)));
            }

            if (simulation.BeforeRelease is { } before)
                scenarios.Add((before, new FailureScenario(Stages.Length - 1, FailureKind.EjectionFailure, 0)));
        }

        var failureCases = ImmutableArray.CreateBuilder<FailureCase>(scenarios.Count);
        Report(progress, nominal, 1, 1 + scenarios.Count);
        foreach ((BodyState start, FailureScenario scenario) in scenarios)
        {
            ImmutableArray<BodyFlight> bodies = FromSi(parameters, simulation.FlyFailure(start, scenario));
            failureCases.Add(new FailureCase(Stages[scenario.Stage].Name, scenario.Kind, scenario.Delay, bodies));
            Report(progress, bodies, 1 + failureCases.Count, 1 + scenarios.Count);
        }

        return failureCases.MoveToImmutable();
    }

    private ImmutableArray<BodyFlight> FromSi(PlanParameters parameters, List<BodyRecorder> logs)
    {
        var bodies = ImmutableArray.CreateBuilder<BodyFlight>(logs.Count);
        foreach (BodyRecorder log in logs)
            bodies.Add(new BodyFlight(this, parameters, log));
        return bodies.MoveToImmutable();
    }

    private static void Report(IProgress<SolveProgress>? progress, ImmutableArray<BodyFlight> bodies, int done, int flights) =>
        progress?.Report(new SolveProgress(Duration.FromSeconds(bodies.Max(b => b.End.Seconds)), (double)done / flights));
}
