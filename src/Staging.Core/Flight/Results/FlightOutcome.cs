using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>How the flight of one body ended.</summary>
public abstract class FlightOutcome
{
    private protected FlightOutcome()
    {
    }

    /// <summary>Chooses by case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="landed">The answer for a landing.</param>
    /// <param name="neverLeftGuide">The answer for a stack that stayed on the guide.</param>
    /// <param name="leftAtmosphere">The answer for a body that outran the atmosphere given.</param>
    /// <param name="stillAloft">The answer for a body still up at the latest time.</param>
    /// <param name="notSolved">The answer for a failed integration.</param>
    /// <returns>The answer of the case at hand.</returns>
    public T Match<T>(
        Func<Landed, T> landed,
        Func<NeverLeftGuide, T> neverLeftGuide,
        Func<LeftAtmosphere, T> leftAtmosphere,
        Func<StillAloft, T> stillAloft,
        Func<NotSolved, T> notSolved) => this switch
        {
            Landed x => landed(x),
            NeverLeftGuide x => neverLeftGuide(x),
            LeftAtmosphere x => leftAtmosphere(x),
            StillAloft x => stillAloft(x),
            _ => notSolved((NotSolved)this),
        };

    /// <summary>The end in words, as the end of a sentence about the body.</summary>
    /// <returns>For example <c>lands at 85.2 s with 4.1 m/s and 0.5 J</c>.</returns>
    public override string ToString() => Match(
        x => Invariant.Text($"lands at {x.Time.Seconds:F1} s with {x.Speed.MetersPerSecond:F1} m/s and {x.KineticEnergy.Joules:F1} J"),
        x => Invariant.Text($"never leaves the guide; its farthest travel is {x.FarthestTravel.Meters:F2} m"),
        x => Invariant.Text($"leaves the given atmosphere at {x.Time.Seconds:F1} s with {x.Velocity.MetersPerSecond:F1} m/s"),
        x => Invariant.Text($"is still aloft at the latest time, {x.Height.Meters:F1} m high"),
        x => $"is not solved: {x.Failure.Message}");

    /// <summary>It reached the ground.</summary>
    public sealed class Landed : FlightOutcome
    {
        internal Landed(double time, double velocity, double mass) => (Time, Speed, Mass, KineticEnergy) = (
            Duration.FromSeconds(time), Speed.FromMetersPerSecond(Math.Abs(velocity)), Mass.FromKilograms(mass),
            Energy.FromJoules(0.5 * mass * velocity * velocity));

        /// <summary>Time from ignition of the lowest stage [s].</summary>
        public Duration Time { get; }

        /// <summary>Speed of descent [m/s]; wind is not in it.</summary>
        public Speed Speed { get; }

        /// <summary>Mass of the body [kg].</summary>
        public Mass Mass { get; }

        /// <summary>Kinetic energy of the descent [J].</summary>
        public Energy KineticEnergy { get; }
    }

    /// <summary>
    /// The thrust never overcame weight and friction, or ended before the end of the guide and the stack slid back.
    /// </summary>
    public sealed class NeverLeftGuide : FlightOutcome
    {
        internal NeverLeftGuide(double farthestTravel) => FarthestTravel = Length.FromMeters(farthestTravel);

        /// <summary>Farthest travel along the guide [m].</summary>
        public Length FarthestTravel { get; }
    }

    /// <summary>It rose above the ceiling of the atmosphere given with the site.</summary>
    public sealed class LeftAtmosphere : FlightOutcome
    {
        internal LeftAtmosphere(double time, double velocity) =>
            (Time, Velocity) = (Duration.FromSeconds(time), Speed.FromMetersPerSecond(velocity));

        /// <summary>Time at which it did [s].</summary>
        public Duration Time { get; }

        /// <summary>Its velocity there [m/s].</summary>
        public Speed Velocity { get; }
    }

    /// <summary>It was still in the air at <see cref="FlightOptions.LatestTime"/>.</summary>
    public sealed class StillAloft : FlightOutcome
    {
        internal StillAloft(double height) => Height = Length.FromMeters(height);

        /// <summary>Its height then [m].</summary>
        public Length Height { get; }
    }

    /// <summary>The integration failed.</summary>
    public sealed class NotSolved : FlightOutcome
    {
        internal NotSolved(SolverFailure failure) => Failure = failure;

        /// <summary>The reason.</summary>
        public SolverFailure Failure { get; }
    }
}
