using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>Positions of the masses of one stage, from the nose tip of the whole stack.</summary>
public sealed record StageBalance
{
    /// <summary>Centre of gravity of the structure, recovery device and payload included [m], 0 to 100 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Structure { get; init => field = Guard.In(value, 0, 100); }

    /// <summary>Centre of gravity of the burnt motors [m], 0 to 100 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length MotorCase { get; init => field = Guard.In(value, 0, 100); }

    /// <summary>Centre of gravity of the propellant, taken as constant while it burns [m], 0 to 100 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Propellant { get; init => field = Guard.In(value, 0, 100); }
}
