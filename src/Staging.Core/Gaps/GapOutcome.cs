using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>How a gap run ended. Closed: use <see cref="Match"/> to treat every case.</summary>
public abstract class GapOutcome
{
    private protected GapOutcome()
    {
    }

    /// <summary>When the outcome was decided, on the clock that starts at burn-through.</summary>
    public Duration Time { get; internal init; }

    /// <summary>What decided it, with its numbers.</summary>
    public string Cause { get; internal init; } = "";

    /// <summary>What change would help; for a lit gap, what keeps the margin.</summary>
    public string Remedy { get; internal init; } = "";

    /// <summary>
    /// True for <see cref="Lit"/>, early or late: whether the upper motor burns, which a flight asks. A run that ends
    /// when its joint opens (<see cref="GapProblem.AfterOpening"/> 0) is lit before that or not at all, so that both
    /// answers are one.
    /// </summary>
    public bool IsLit => this is Lit;

    /// <summary>
    /// True for <see cref="Lit"/> before the joint opened: what a search for vents, gaps and joints counts, because a
    /// jet across an open gap is nothing to build on.
    /// </summary>
    public bool IsLitBeforeParting => this is Lit { MarginToSeparation: not { Seconds: < 0 } };

    /// <summary>The outcome in words: what, when, why, and what would help.</summary>
    /// <returns>Three lines.</returns>
    public sealed override string ToString() => Invariant.Text($"{Name} at {Time.Milliseconds:F2} ms.\n{Cause}\n{Remedy}");

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

    private string Name => Match(
        _ => "Lit", _ => "Pushed apart", _ => "Vented away", _ => "Too cool", _ => "Did not reach the last vent", _ => "Not solved");

    /// <summary>
    /// The grain surface passed its ignition temperature while the joint still guided the gas, or after it had opened
    /// while the core of the booster's jet had reached the throat all the time: motors in contact. The sign of
    /// <see cref="MarginToSeparation"/> tells them apart.
    /// </summary>
    public sealed class Lit : GapOutcome
    {
        internal Lit()
        {
        }

        /// <summary>
        /// Time from lit to the joint opening by gap pressure alone; negative when it was lit only after that; null
        /// when it had not opened by the end of the run.
        /// </summary>
        public Duration? MarginToSeparation { get; internal init; }

        /// <summary>Which way the heat came that lit it.</summary>
        public IgnitionPath Path { get; internal init; }

        /// <summary>
        /// How far the surface would have gone above ignition temperature while something guided the gas; see
        /// <see cref="GapRun.PeakGrainSurface"/>.
        /// </summary>
        public TemperatureDelta SurfaceMargin { get; internal init; }
    }

    /// <summary>
    /// The joint opened before the grain was lit, under gap pressure and what drag and thrust did to the bodies.
    /// </summary>
    public sealed class PushedApart : GapOutcome
    {
        internal PushedApart()
        {
        }

        /// <summary>Greatest gap gauge pressure up to then.</summary>
        public Pressure PeakGaugePressure { get; internal init; }

        /// <summary>
        /// Least distance of the front from the last vent until the joint opened; zero when it had passed.
        /// </summary>
        public Length FrontRemaining { get; internal init; }

        /// <summary>How far the grain surface stayed below its ignition temperature.</summary>
        public TemperatureDelta SurfaceShortfall { get; internal init; }
    }

    /// <summary>
    /// The products left through the vents, the last or earlier ones; too little of them came to the nozzle.
    /// </summary>
    public sealed class VentedAway : GapOutcome
    {
        internal VentedAway()
        {
        }

        /// <summary>Greatest mass fraction of products at the nozzle [-], 0 to 1.</summary>
        public double ProductsAtNozzle { get; internal init; }

        /// <summary>How far the grain surface stayed below its ignition temperature.</summary>
        public TemperatureDelta SurfaceShortfall { get; internal init; }
    }

    /// <summary>Products came to the nozzle, but the grain surface never reached its ignition temperature.</summary>
    public sealed class TooCool : GapOutcome
    {
        internal TooCool()
        {
        }

        /// <summary>Greatest grain surface temperature.</summary>
        public Temperature PeakSurface { get; internal init; }

        /// <summary>How far the grain surface stayed below its ignition temperature.</summary>
        public TemperatureDelta SurfaceShortfall { get; internal init; }
    }

    /// <summary>The front never reached the last vent, and passed no other.</summary>
    public sealed class DidNotReach : GapOutcome
    {
        internal DidNotReach()
        {
        }

        /// <summary>Least distance of the front from the last vent.</summary>
        public Length FrontRemaining { get; internal init; }
    }

    /// <summary>
    /// The solver gave up before the end of the run, whatever had happened until then: a run that was cut short is
    /// never called lit.
    /// </summary>
    public sealed class NotSolved : GapOutcome
    {
        internal NotSolved(SolverFailure failure) => Failure = failure;

        /// <summary>Why.</summary>
        public SolverFailure Failure { get; }
    }
}
