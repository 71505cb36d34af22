using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>What a critical-flow nozzle reads.</summary>
public sealed record CriticalNozzleReading
{
    /// <summary>Mass flow.</summary>
    public required MassFlow MassFlow { get; init; }

    /// <summary>Discharge coefficient Cd' [-].</summary>
    public required double DischargeCoefficient { get; init; }

    /// <summary>Critical flow factor C* [-] that was used.</summary>
    public required double CriticalFlowFactor { get; init; }

    /// <summary>Throat Reynolds number 4 q/(pi d mu0) [-].</summary>
    public required double ThroatReynolds { get; init; }

    /// <summary>
    /// Whether the Reynolds number lies in the range of the coefficient; outside it the reading is an extrapolation.
    /// </summary>
    public required bool ReynoldsInRange { get; init; }
}
