using System.Collections.Immutable;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The result of flying a plan: every body, every staging, and every failure case.</summary>
public sealed class FlightRun
{
    internal FlightRun(
        FlightPlan plan,
        FlightOptions options,
        ImmutableArray<BodyFlight> bodies,
        ImmutableArray<StagingReport> stagings,
        ImmutableArray<FailureCase> failureCases,
        SolverWork statistics)
    {
        Plan = plan;
        Options = options;
        Bodies = bodies;
        Stagings = stagings;
        FailureCases = failureCases;
        Statistics = new SolverStatistics(statistics);
    }

    /// <summary>The plan that was flown.</summary>
    public FlightPlan Plan { get; }

    /// <summary>How it was computed.</summary>
    public FlightOptions Options { get; }

    /// <summary>
    /// The bodies of the nominal flight: first the one with the uppermost stage, from the guide on, then the
    /// dropped ones, in order.
    /// </summary>
    public ImmutableArray<BodyFlight> Bodies { get; }

    /// <summary>The body with the uppermost stage.</summary>
    public BodyFlight Main => Bodies[0];

    /// <summary>The stagings that were reached, lowest first.</summary>
    public ImmutableArray<StagingReport> Stagings { get; }

    /// <summary>
    /// For each staging the bodies if the motor stays cold, with stages joined and parted, or lights late, and the
    /// flight with nothing ejected; empty where the scope leaves them out.
    /// </summary>
    public ImmutableArray<FailureCase> FailureCases { get; }

    /// <summary>Work done, failure cases included.</summary>
    public SolverStatistics Statistics { get; }

    /// <summary>
    /// Greatest height of the nominal flight [m]; null where the stack did not fly or has no apogee.
    /// </summary>
    public Length? Apogee => Main.Apogee;

    /// <summary>Greatest speed of the nominal flight on the way up [m/s].</summary>
    public Speed MaximumSpeed => Main.MaximumSpeed;

    /// <summary>Speed at the end of the guide [m/s]; null where the stack never left it.</summary>
    public Speed? GuideExitSpeed => Main.Find(FlightEventKind.GuideExit)?.After.Velocity;

    /// <summary>
    /// Residual of the mass balance: mass on the guide less the propellant burnt and the final masses of all bodies,
    /// over the mass on the guide [-]; round-off.
    /// </summary>
    /// <returns>The residual.</returns>
    /// <exception cref="InvalidOperationException">Not every body was followed.</exception>
    public double MassResidual()
    {
        if (Options.Scope == FlightScope.UppermostStage)
            throw new InvalidOperationException("The balance of mass needs every body; fly with the scope AllBodies or Everything.");
        double burnt = 0, end = 0, start = Plan.LiftOffMass.Kilograms;
        foreach (BodyFlight body in Bodies)
        {
            end += body.MassAtEnd.Kilograms;
            burnt += body.BurntPropellant.Kilograms;
        }

        return (start - burnt - end) / start;
    }

    /// <summary>
    /// The latest ignition of a stage at which the path is still within a limit from vertical. The flight is a
    /// straight line, so the tilt is a proxy: a gravity turn at the speeds of the flight with the stage cold and
    /// joined, started with a given tilt at the end of the guide, asinh(tan gamma) = asinh(tan gamma0) - integral of
    /// g/v dt. It needs a run of the scope <see cref="FlightScope.Everything"/> with its tracks kept.
    /// </summary>
    /// <param name="upperStage">Name of the stage to be lit.</param>
    /// <param name="tiltAtGuideExit">Tilt from vertical at the end of the guide, wind and lean together [deg], 0.1 to
    /// 60.</param>
    /// <param name="maxTilt">Limit of tilt from vertical [deg], 0.1 to 89.</param>
    /// <returns>
    /// Time from ignition of the lowest stage [s]; null where the tilt is beyond the limit before the stage could
    /// light, or the cold stack never leaves the guide.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">An angle outside its range.</exception>
    /// <exception cref="ArgumentException">The run has no such staging, or no trajectory to follow.</exception>
    public Duration? LatestIgnition(string upperStage, Angle tiltAtGuideExit, Angle maxTilt) =>
        StagingTilt.LatestIgnition(this, upperStage, tiltAtGuideExit, maxTilt);

    /// <summary>The flight in a few lines.</summary>
    /// <returns>Apogee and greatest speed, then each staging and how each body ends.</returns>
    public override string ToString()
    {
        string apogee = Apogee is { } height ? Invariant.Text($"Apogee {height.Meters:F1} m") : "No apogee";
        string exit = GuideExitSpeed is { } speed ? Invariant.Text($", {speed.MetersPerSecond:F1} m/s at the end of the guide") : "";
        return string.Join('\n', [
            Invariant.Text($"{apogee}, greatest speed {MaximumSpeed.MetersPerSecond:F1} m/s{exit}."),
            .. Stagings.Select(s => s.ToString()),
            .. Bodies.Select(b => b.ToString()),
        ]);
    }
}
