using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Plans;

/// <summary>
/// Lights a stage through a gap: answers the flight's question with a gap run at the pressure, speed and masses of that
/// moment.
/// </summary>
public sealed record GapIgnition : IGapIgnition
{
    /// <summary>Least pressure at the holes [Pa]: a thousandth of an atmosphere.</summary>
    private const double MinPressure = 100;

    /// <summary>
    /// The gap is watched for twice as long as its source is known to last, within these [s]: by then it has bled down.
    /// After a second the flight is no longer what it was at burn-through, and no motor lit with the first is so late.
    /// </summary>
    private const double MinHorizon = 0.2, MaxHorizon = 1;

    /// <summary>The gap as built.</summary>
    public required GapDesign Design { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// How new vents would be drilled, for the advice of a review; null, the default, asks for no advice: motors in
    /// contact have no vents.
    /// </summary>
    public VentLayout? Layout { get; init; }

    /// <summary>
    /// Pressure coefficient of the body side at the holes [-], -1.5 to 1: (pressure at the hole - static pressure) over
    /// dynamic pressure. Near 0 on a long cylinder a few calibres behind the nose; negative just behind a shoulder. An
    /// outlet elsewhere has a coefficient of its own, which counts from this one: see <see cref="VentTarget.Outside"/>.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double HolePressureCoefficient { get; init => field = Guard.In(value, -1.5, 1); }

    /// <summary>
    /// How the gas in the gap is modelled: <see cref="GapModel.TwoZone"/>, the default,
    /// <see cref="GapModel.WellStirred"/>, or <see cref="GapModel.OneDimensional"/> at about a hundred times the work,
    /// in the run as in the advice of a review.
    /// </summary>
    public GapModel Model { get; init => field = Guard.NotNull(value); } = new GapModel.TwoZone();

    /// <summary>How the gap is integrated.</summary>
    public SolverOptions Solver { get; init => field = Guard.NotNull(value); } = SolverOptions.ForGaps;

    /// <summary>
    /// The gap at a given burn-through; masses, speed and forces of no rocket count as far as a gap takes them.
    /// </summary>
    /// <param name="state">Air, flight and masses at that moment.</param>
    /// <returns>The problem that is solved.</returns>
    public GapProblem ProblemAt(BurnThroughState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Of(state, Taken);
    }

    /// <summary>
    /// A mass as a gap takes it: what is outside its range is no rocket any more, but a flight computes it.
    /// </summary>
    private static Mass Taken(Mass flown) => flown.Kilograms > 0
        ? Mass.FromKilograms(Math.Clamp(flown.Kilograms, SeparatingBodies.LeastMass, SeparatingBodies.MostMass))
        : flown;

    private GapProblem Of(BurnThroughState state, Func<Mass, Mass> taken)
    {
        double speed = state.Speed.MetersPerSecond;
        // What a gap takes at most is no rocket any more, but a flight computes it.
        double dynamicPressure = Math.Min(0.5 * state.AirDensity.KilogramsPerCubicMeter * speed * speed, GapProblem.MostDynamicPressure);
        // No hole sees less than next to nothing, whatever the coefficient says of fast flight.
        double hole = Math.Max(MinPressure, state.AirPressure.Pascals + HolePressureCoefficient * dynamicPressure);
        double lowest = OutletPressure.LowestCoefficient(Design);
        if (hole + lowest * dynamicPressure < MinPressure)
            dynamicPressure = (hole - MinPressure) / -lowest;
        double ahead = state.DragAhead.Newtons / state.MassAhead.Kilograms;
        double behind = (state.ThrustBehind.Newtons - state.DragBehind.Newtons) / state.MassBehind.Kilograms;
        double closing = Math.Clamp(ahead + behind, -SeparatingBodies.MostAcceleration, SeparatingBodies.MostAcceleration);
        return new GapProblem
        {
            Design = Design,
            Bodies = new SeparatingBodies
            {
                MassAhead = taken(state.MassAhead),
                MassBehind = taken(state.MassBehind),
                ClosingAcceleration = Acceleration.FromMetersPerSecondSquared(closing),
            },
            Surroundings = new GasState
            {
                Gas = PerfectGas.DryAir,
                Pressure = Pressure.FromPascals(hole),
                Temperature = state.AirTemperature,
            },
            DynamicPressure = Pressure.FromPascals(dynamicPressure),
            Horizon = Duration.FromSeconds(Math.Min(MaxHorizon, Math.Max(MinHorizon, 2 * Design.Source.KnownDuration))),
        };
    }

    /// <summary>
    /// Runs the gap. Lit, the stages part at once: the exhaust of the upper motor pushes harder than any joint holds,
    /// so the opening by gap pressure alone is a margin, not a time of separation. Unlit, they part when the gap
    /// pressure opens the joint, if it does.
    /// </summary>
    /// <param name="state">Air, flight and masses at burn-through.</param>
    /// <param name="cancellationToken">Stops the run.</param>
    /// <returns>
    /// Whether and when the upper motor lights, and when the stages part; its details are the <see cref="GapRun"/>.
    /// </returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public GapIgnitionResult Ignite(BurnThroughState state, CancellationToken cancellationToken = default)
    {
        GapRun run = ProblemAt(state).Solve(Model, Solver, cancellationToken: cancellationToken);
        return run.Outcome is GapOutcome.Lit lit
            ? GapIgnitionResult.Lit(ignitionLag: lit.Time, separationLag: lit.Time, lit.Cause, run)
            : GapIgnitionResult.NotLit(run.TimeOf(GapEventKind.JointOpens), run.Outcome.Cause, run);
    }

    /// <summary>
    /// The gap below a stage at rest on the ground, to check what does not depend on the flight; masses are those of
    /// the plan, whether a gap takes them or not.
    /// </summary>
    internal GapProblem OnGround(FlightPlan flight, int upper, AirSample air) => Of(new BurnThroughState
    {
        LowerStage = flight.Stages[upper - 1].Name,
        UpperStage = flight.Stages[upper].Name,
        Time = Duration.Zero,
        Height = Length.Zero,
        Speed = Speed.Zero,
        MachNumber = 0,
        AirPressure = Pressure.FromPascals(air.Pressure_Pa),
        AirTemperature = Temperature.FromKelvins(air.Temperature_K),
        AirDensity = Density.FromKilogramsPerCubicMeter(air.Density_kg_per_m3),
        MassAhead = Mass.FromKilograms(flight.Payload.Kilograms + flight.Stages.Skip(upper).Sum(s => s.LoadedMass.Kilograms)),
        MassBehind = flight.Stages[upper - 1].BurntMass,
        DragAhead = Force.Zero,
        DragBehind = Force.Zero,
        ThrustBehind = Force.Zero,
    }, mass => mass);
}
