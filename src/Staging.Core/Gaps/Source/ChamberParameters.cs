using Staging.Core.Discharge;

namespace Staging.Core.Gaps;

/// <summary>One booster chamber as plain SI numbers.</summary>
internal sealed class ChamberParameters
{
    /// <summary>Moment of burn-through on the clock of the run [s].</summary>
    public required double Start { get; init; }

    public required double FlameTemperature { get; init; }

    public required double Volume { get; init; }

    public required double Pressure { get; init; }

    /// <summary>The forward opening, fully open.</summary>
    public required OrificeSize Opening { get; init; }

    public required IDischargeLaw OpeningLaw { get; init; }

    public required double OpeningTime { get; init; }

    /// <summary>How far the diameter of the opening has grown, a time [s] after <see cref="Start"/> [-].</summary>
    public double Grown(double sinceStart) => Math.Clamp(sinceStart / OpeningTime, 0, 1);

    /// <summary>The booster's nozzle throat.</summary>
    public required OrificeSize Nozzle { get; init; }

    public required double FragmentMass { get; init; }

    /// <summary>Time over which fragments burn as a half-sine pulse [s]; not used where a burn rate is given.</summary>
    public required double FragmentBurnTime { get; init; }

    /// <summary>
    /// Rate at which the burnt share of a fragment grows at the reference pressure, 2 r/thickness [1/s]; zero for a
    /// half-sine pulse.
    /// </summary>
    public required double ShareRate { get; init; }

    /// <summary>Exponent of pressure in that rate [-].</summary>
    public required double PressureExponent { get; init; }

    /// <summary>Where the unburnt share stands in the state vector; -1 for a half-sine pulse.</summary>
    public required int Fragments { get; init; }

    /// <summary>Where its parcel begins in the state vector.</summary>
    public required int At { get; init; }
}
