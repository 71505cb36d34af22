using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>The pieces of a broken web as plain SI numbers: where they are, and how they burn.</summary>
/// <remarks>
/// They fly at one speed along the stations of the tube and stay at the nozzle plane. One state holds the share of
/// their way that is left, one the share of their mass: both fall to zero. The old faces burn from the start, the fresh
/// ones from a known time on, at the rate of the gap pressure, until the mass is gone. What they burn while they still
/// fly, and what is lost through openings on the way, is the same share of every piece.
/// </remarks>
internal sealed class PieceParameters
{
    /// <summary>Mass at rupture [kg].</summary>
    public required double Mass { get; init; }

    public required double Density { get; init; }

    /// <summary>Faces that burnt already [m2].</summary>
    public required double OldFaces { get; init; }

    /// <summary>Faces that the rupture made [m2].</summary>
    public required double FreshFaces { get; init; }

    /// <summary>When the fresh faces burn as well [s].</summary>
    public required double FreshAt { get; init; }

    /// <summary>Burning rate at one atmosphere [m/s].</summary>
    public required double Rate { get; init; }

    public required double PressureExponent { get; init; }

    /// <summary>Speed along the tube [m/s]; zero for pieces that stay at the booster.</summary>
    public required double Speed { get; init; }

    /// <summary>Length over which their flames are spread along the tube [m]: the size of a piece.</summary>
    public required double Size { get; init; }

    /// <summary>Share of the pieces that no opening on the way loses [-].</summary>
    public required double Kept { get; init; }

    /// <summary>When the openings are passed, and what they lose is lost [s].</summary>
    public required double LostAt { get; init; }

    /// <summary>Where the unburnt share stands in the state vector.</summary>
    public required int Unburnt { get; init; }

    /// <summary>Where the share of the way that is left stands in the state vector.</summary>
    public required int Way { get; init; }

    /// <summary>Mass that all pieces together burn per second, those lost as well [kg/s].</summary>
    /// <param name="pressure">Pressure where they are [Pa].</param>
    /// <param name="from">Time at or after which this holds [s].</param>
    public T Burning<T>(T pressure, double from)
        where T : struct, IReal<T> =>
        Density * Rate * T.Pow(pressure / BurnRateLaw.ReferencePressure_Pa, PressureExponent)
        * (from >= FreshAt ? OldFaces + FreshFaces : OldFaces);

    /// <summary>Share of the pieces that is in the tube from a time on [-].</summary>
    public double KeptFrom(double from) => from >= LostAt ? Kept : 1;
}
