using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>How the flight of one body ended.</summary>
public abstract record FlightOutcome
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

    /// <summary>It reached the ground.</summary>
    /// <param name="Time">Time from ignition of the lowest stage [s].</param>
    /// <param name="Speed">Speed of descent [m/s]; wind is not in it.</param>
    /// <param name="Mass">Mass of the body [kg].</param>
    /// <param name="KineticEnergy">Kinetic energy of the descent [J].</param>
    public sealed record Landed(Duration Time, Speed Speed, Mass Mass, Energy KineticEnergy) : FlightOutcome;

    /// <summary>
    /// The thrust never overcame weight and friction, or gave out before the end of the guide and the stack slid back.
    /// </summary>
    /// <param name="FarthestTravel">Farthest travel along the guide [m].</param>
    public sealed record NeverLeftGuide(Length FarthestTravel) : FlightOutcome;

    /// <summary>It rose above the ceiling of the atmosphere given with the site.</summary>
    /// <param name="Time">When it did [s].</param>
    /// <param name="Velocity">Its velocity there [m/s].</param>
    public sealed record LeftAtmosphere(Duration Time, Speed Velocity) : FlightOutcome;

    /// <summary>It was still in the air at <see cref="FlightOptions.LatestTime"/>.</summary>
    /// <param name="Height">Its height then [m].</param>
    public sealed record StillAloft(Length Height) : FlightOutcome;

    /// <summary>The integration gave up.</summary>
    /// <param name="Failure">Why.</param>
    public sealed record NotSolved(SolverFailure Failure) : FlightOutcome;
}
