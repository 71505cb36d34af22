using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>What a drag build-up needs beside the airframe.</summary>
public sealed record DragConditions
{
    /// <summary>The air; its density and viscosity set the Reynolds number.</summary>
    public required IAtmosphere Atmosphere { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// A typical altitude of the flight above sea level [m], -500 m to 30 km. One table holds for the whole flight, so
    /// take the middle.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Altitude { get; init => field = Guard.In(value, -500, 30_000); }

    /// <summary>
    /// Height of the surface roughness [m], 0 to 1 mm. Orders of magnitude: polished paint 2 um, sprayed paint 20 um,
    /// bare paper or balsa 50 to 100 um (S. F. Hoerner, Fluid-Dynamic Drag, 1965; from memory).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Roughness { get; init => field = Guard.In(value, 0, 1e-3); }

    /// <summary>
    /// Diameter over which the jet of burning motors fills the base [m], 0 to 2 m; about the case diameter. Zero stands
    /// for a coasting body.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length JetDiameter { get; init => field = Guard.In(value, 0, 2); }
}
