using Staging.Core.Discharge;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>One booster chamber as plain SI numbers, with what still burns in it and what it throws out.</summary>
internal sealed class ChamberParameters
{
    /// <summary>Moment of burn-through on the clock of the run [s].</summary>
    public required double Start { get; init; }

    /// <summary>Temperature of everything that burns [K].</summary>
    public required double FlameTemperature { get; init; }

    /// <summary>Free volume [m3].</summary>
    public required double Volume { get; init; }

    /// <summary>Absolute pressure at burn-through [Pa].</summary>
    public required double Pressure { get; init; }

    /// <summary>The forward opening, fully open.</summary>
    public required OrificeSize Opening { get; init; }

    public required IDischargeLaw OpeningLaw { get; init; }

    /// <summary>Time over which the diameter of what opens at once grows, evenly [s].</summary>
    public required double OpeningTime { get; init; }

    /// <summary>The booster's nozzle throat.</summary>
    public required OrificeSize Nozzle { get; init; }

    /// <summary>Fragments that burn in the chamber over a stated time; null where there are none.</summary>
    public PulseParameters? Pulse { get; init; }

    /// <summary>Fragments that burn in the chamber at the rate of its pressure; null where there are none.</summary>
    public PlateParameters? Plates { get; init; }

    /// <summary>The ring that a cap has left of the web; null where there is none.</summary>
    public RingParameters? Ring { get; init; }

    /// <summary>Pieces that were thrown up the tube; null where there are none.</summary>
    public PieceParameters? Pieces { get; init; }

    /// <summary>Where its parcel begins in the state vector.</summary>
    public required int At { get; init; }

    /// <summary>
    /// When what burns over a known time has burnt [s]; the moment of burn-through where nothing does.
    /// </summary>
    public double KnownEnd => Start + (Pulse?.Time ?? 0);

    /// <summary>Propellant that is left at burn-through [kg].</summary>
    public double Unburnt => (Pulse?.Mass ?? 0) + (Plates?.Mass ?? 0) + (Ring?.Mass ?? 0) + (Pieces?.Mass ?? 0);

    /// <summary>Diameter of the opening over that of the full one [-].</summary>
    /// <param name="sinceStart">Time since <see cref="Start"/> [s].</param>
    /// <param name="growth">Growth of the ring's burning sphere [m]; not used without a ring.</param>
    public T Grown<T>(T sinceStart, T growth)
        where T : struct, IReal<T>
    {
        T atOnce = sinceStart.Value < OpeningTime ? T.Max(sinceStart / OpeningTime, 0) : 1;
        return Ring is null ? atOnce : T.Max(Ring.AtOnce * atOnce, Ring.Hole.Opened(growth));
    }

    /// <summary>The same from a state vector.</summary>
    public T Grown<T>(T sinceStart, StateVector<T> y)
        where T : struct, IReal<T> => Grown(sinceStart, Ring is { } ring ? ring.Growth(y[ring.Left]) : 0);
}
