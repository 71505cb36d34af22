using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Gases;

/// <summary>The weather at a launch site, measured at the ground.</summary>
public sealed record SiteConditions
{
    /// <summary>Elevation of the site above mean sea level [m], -430 to 6000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Elevation { get; init => field = Guard.In(value, -430, 6000); }

    /// <summary>
    /// Absolute pressure at the site itself [Pa], 40 to 110 kPa. Weather reports mostly give the pressure reduced to
    /// sea level; that number is too high for a site above it, by about 12 hPa for each 100 m.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Pressure Pressure { get; init => field = Guard.In(value, 40e3, 110e3); }

    /// <summary>Air temperature at the site [K], 220 to 330.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature Temperature { get; init => field = Guard.In(value, 220, 330); }

    /// <summary>Relative humidity at the site [-], 0 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double RelativeHumidity { get; init => field = Guard.In(value, 0, 1); }

    /// <summary>Looks for a pressure that does not belong to the elevation.</summary>
    /// <returns>
    /// A warning <c>GAS001</c> when the pressure is more than 6 % from the standard one at this elevation: weather
    /// stays within that band outside the core of a great storm, so a sea-level pressure was probably entered.
    /// </returns>
    public ImmutableArray<ModelFinding> Check()
    {
        const double Band = 0.06;
        double standard = StandardAtmosphere.Us1976.At(Elevation.Meters).Pressure_Pa;
        double given = Pressure.Pascals;
        if (Math.Abs(given / standard - 1) <= Band)
            return [];
        return
        [
            new ModelFinding(FindingSeverity.Warning, "GAS001", nameof(Pressure),
                Invariant.Text($"Pressure is {given / 100:F1} hPa; at {Elevation.Meters:F0} m the standard atmosphere has "
                    + $"{standard / 100:F1} hPa. Enter the pressure at the site, not the one reduced to sea level.")),
        ];
    }
}
