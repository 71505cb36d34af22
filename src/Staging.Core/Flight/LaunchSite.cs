using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The launch site.</summary>
public sealed record LaunchSite
{
    /// <summary>The air above the site.</summary>
    public required IAtmosphere Atmosphere { get; init => field = Guard.NotNull(value); }

    /// <summary>Height of the site above sea level [m], -500 m to 9000 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Elevation { get; init => field = Guard.In(value, -500, 9000); }

    /// <summary>
    /// Steady wind [m/s], 0 to 50 m/s. It enters only the estimate of drift: the flight itself is computed in still
    /// air.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Speed Wind { get; init => field = Guard.In(value, 0, 50); }

    /// <summary>Gravity. The default is <see cref="Gravity.Standard"/>.</summary>
    public Gravity Gravity { get; init => field = Guard.NotNull(value); } = Gravity.Standard;
}
