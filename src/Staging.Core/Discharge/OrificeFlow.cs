using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>The flow through an opening between two gases at rest.</summary>
public sealed record OrificeFlow
{
    /// <summary>Mass flow from side one to side two; negative the other way.</summary>
    public required MassFlow MassFlow { get; init; }

    /// <summary>The side of the higher pressure, whose gas flows; side one at equal pressures.</summary>
    public required GasState Upstream { get; init; }

    /// <summary>Lower over higher pressure [-].</summary>
    public required double PressureRatio { get; init; }

    /// <summary>The ratio [-] at and below which the jet is sonic.</summary>
    public required double CriticalPressureRatio { get; init; }

    /// <summary>What the jet does.</summary>
    public required OrificeRegime Regime { get; init; }

    /// <summary>
    /// Whether the flow changes with the lower pressure: always when subsonic; when choked only for a law that does not
    /// level off, such as the sharp edge.
    /// </summary>
    public required bool AnswersToDownstream { get; init; }

    /// <summary>Flow over the ideal isentropic flow through the whole hole area [-]; zero without flow.</summary>
    public required double DischargeCoefficient { get; init; }

    /// <summary>
    /// Speed of the jet where it is narrowest, isentropic from rest; at most the speed of sound there.
    /// </summary>
    public required Speed JetSpeed { get; init; }

    /// <summary>In what way the case lies outside the range of the law.</summary>
    public required DischargeNotes Notes { get; init; }
}
