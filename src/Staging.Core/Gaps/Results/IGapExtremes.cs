namespace Staging.Core.Gaps;

/// <summary>The extremes of a run, from which its outcome is told.</summary>
internal interface IGapExtremes
{
    /// <summary>When the grain surface passed its ignition temperature [s]; not a number while it has not.</summary>
    double LitTime { get; }

    /// <summary>Highest surface temperature [K].</summary>
    double PeakSurface { get; }

    /// <summary>
    /// Highest surface temperature after the joint had opened [K]; null while it has not been followed beyond.
    /// </summary>
    double? PeakSurfaceAfterOpening { get; }

    /// <summary>Highest gap pressure [Pa].</summary>
    double PeakPressure { get; }

    /// <summary>Greatest product fraction at the nozzle [-].</summary>
    double PeakProducts { get; }

    /// <summary>Least distance of the front from the last vent [m].</summary>
    double MinFrontRemaining { get; }
}
