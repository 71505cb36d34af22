using System.Collections.Immutable;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>A flown plan: every body, every staging, and what happens where a staging fails.</summary>
public sealed class FlightRun
{
    internal FlightRun(
        FlightPlan plan,
        FlightOptions options,
        ImmutableArray<BodyFlight> bodies,
        ImmutableArray<StagingReport> stagings,
        ImmutableArray<FailureCase> failureCases,
        SolverStatistics statistics)
    {
        Plan = plan;
        Options = options;
        Bodies = bodies;
        Stagings = stagings;
        FailureCases = failureCases;
        Statistics = statistics;
    }

    /// <summary>The plan that was flown.</summary>
    public FlightPlan Plan { get; }

    /// <summary>How it was computed.</summary>
    public FlightOptions Options { get; }

    /// <summary>
    /// The bodies of the nominal flight: first the one with the uppermost stage, from the guide on, then what was
    /// dropped, in order.
    /// </summary>
    public ImmutableArray<BodyFlight> Bodies { get; }

    /// <summary>The body with the uppermost stage.</summary>
    public BodyFlight Main => Bodies[0];

    /// <summary>The stagings that came about, lowest first.</summary>
    public ImmutableArray<StagingReport> Stagings { get; }

    /// <summary>
    /// For each staging what falls if the motor stays cold, joined and parted, or lights late, and the whole with
    /// nothing ejected; empty where the scope left them out.
    /// </summary>
    public ImmutableArray<FailureCase> FailureCases { get; }

    /// <summary>Work done, failure cases included.</summary>
    public SolverStatistics Statistics { get; }

    /// <summary>
    /// Greatest height of the nominal flight [m]; null where the stack did not fly or did not turn over.
    /// </summary>
    public Length? Apogee => Main.Apogee;

    /// <summary>Greatest speed of the nominal flight on the way up [m/s].</summary>
    public Speed MaximumSpeed => Main.MaximumSpeed;

    /// <summary>Speed at the end of the guide [m/s]; null where the stack never left it.</summary>
    public Speed? GuideExitSpeed => Main.Find(FlightEventKind.GuideExit)?.After.Velocity;

    /// <summary>Where the mass of the stack went.</summary>
    /// <returns>The ledger.</returns>
    /// <exception cref="InvalidOperationException">Not every body was followed.</exception>
    public MassLedger MassLedger()
    {
        if (Options.Scope == FlightScope.UppermostStage)
            throw new InvalidOperationException("The mass ledger needs every body; fly with the scope AllBodies or Everything.");
        double burnt = 0, end = 0;
        foreach (BodyFlight body in Bodies)
        {
            end += body.MassAtEnd.Kilograms;
            burnt += body.BurntPropellant.Kilograms;
        }

        return new MassLedger(Plan.LiftOffMass, Mass.FromKilograms(burnt), Mass.FromKilograms(end));
    }
}
