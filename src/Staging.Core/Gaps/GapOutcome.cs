using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>How a gap run ended. Closed: use <see cref="Match"/> to treat every case.</summary>
public abstract record GapOutcome
{
    private protected GapOutcome()
    {
    }

    /// <summary>When the outcome was decided, on the clock that starts at burn-through.</summary>
    public required Duration Time { get; init; }

    /// <summary>What decided it, with its numbers.</summary>
    public required string Cause { get; init; }

    /// <summary>What change would help; for a lit gap, what keeps the margin.</summary>
    public required string Remedy { get; init; }

    /// <summary>True for <see cref="Lit"/>.</summary>
    public bool IsLit => this is Lit;

    /// <summary>
    /// True for <see cref="Lit"/> before the joint opened: what a search for vents, gaps and joints counts.
    /// </summary>
    public bool IsLitBeforeParting => this is Lit { MarginToSeparation: not { Seconds: < 0 } };

    /// <summary>Treats every case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="lit">For a lit upper motor.</param>
    /// <param name="pushedApart">For stages that parted first.</param>
    /// <param name="ventedAway">For products that left before they reached the nozzle.</param>
    /// <param name="tooCool">For a grain that never got hot enough.</param>
    /// <param name="didNotReach">For a front that never reached the last vent.</param>
    /// <param name="notSolved">For a run that the integrator gave up.</param>
    /// <returns>The answer of the case that holds.</returns>
    public T Match<T>(
        Func<Lit, T> lit,
        Func<PushedApart, T> pushedApart,
        Func<VentedAway, T> ventedAway,
        Func<TooCool, T> tooCool,
        Func<DidNotReach, T> didNotReach,
        Func<NotSolved, T> notSolved) => this switch
        {
            Lit x => lit(x),
            PushedApart x => pushedApart(x),
            VentedAway x => ventedAway(x),
            TooCool x => tooCool(x),
            DidNotReach x => didNotReach(x),
            NotSolved x => notSolved(x),
            _ => throw new InvalidOperationException($"Unknown outcome {GetType().Name}."),
        };

    /// <summary>
    /// The grain surface passed its ignition temperature while the joint still guided the gas, or after it had opened
    /// while the core of the booster's jet had reached the throat all the time: motors in contact. The sign of
    /// <see cref="MarginToSeparation"/> tells them apart.
    /// </summary>
    public sealed record Lit : GapOutcome
    {
        /// <summary>
        /// Time from lit to the joint opening by gap pressure alone; negative when it was lit only after that; null
        /// when it had not opened by the end of the run.
        /// </summary>
        public required Duration? MarginToSeparation { get; init; }

        /// <summary>How far the surface would have gone above ignition temperature by the end of the run.</summary>
        public required TemperatureDelta SurfaceMargin { get; init; }
    }

    /// <summary>
    /// The joint opened before the grain was lit, under gap pressure and what drag and thrust did to the bodies.
    /// </summary>
    public sealed record PushedApart : GapOutcome
    {
        /// <summary>Greatest gap gauge pressure up to then.</summary>
        public required Pressure PeakGaugePressure { get; init; }

        /// <summary>Distance of the front from the last vent when the joint opened; zero when it had passed.</summary>
        public required Length FrontRemaining { get; init; }

        /// <summary>How far the grain surface stayed below its ignition temperature.</summary>
        public required TemperatureDelta SurfaceShortfall { get; init; }
    }

    /// <summary>
    /// The products left through the vents, the last or earlier ones; too little of them came to the nozzle.
    /// </summary>
    public sealed record VentedAway : GapOutcome
    {
        /// <summary>Greatest mass fraction of products at the nozzle [-], 0 to 1.</summary>
        public required double ProductsAtNozzle { get; init; }

        /// <summary>How far the grain surface stayed below its ignition temperature.</summary>
        public required TemperatureDelta SurfaceShortfall { get; init; }
    }

    /// <summary>Products came to the nozzle, but the grain surface never reached its ignition temperature.</summary>
    public sealed record TooCool : GapOutcome
    {
        /// <summary>Greatest grain surface temperature.</summary>
        public required Temperature PeakSurface { get; init; }

        /// <summary>How far the grain surface stayed below its ignition temperature.</summary>
        public required TemperatureDelta SurfaceShortfall { get; init; }
    }

    /// <summary>The front never reached the last vent, and passed no other.</summary>
    public sealed record DidNotReach : GapOutcome
    {
        /// <summary>Least distance of the front from the last vent.</summary>
        public required Length FrontRemaining { get; init; }
    }

    /// <summary>
    /// The solver gave up before the end of the run, whatever had happened until then: a run that was cut short is
    /// never called lit.
    /// </summary>
    public sealed record NotSolved : GapOutcome
    {
        /// <summary>Why.</summary>
        public required SolverFailure Failure { get; init; }
    }
}
