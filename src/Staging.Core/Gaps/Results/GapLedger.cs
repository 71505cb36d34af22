using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// Mass and energy of chamber and gap accounted for at the end of a run. The residuals are numerical error and nothing
/// else.
/// </summary>
public sealed record GapLedger
{
    /// <summary>Mass in chamber and gap at burn-through.</summary>
    public required Mass InitialMass { get; init; }

    /// <summary>Mass of fragments burnt.</summary>
    public required Mass Burnt { get; init; }

    /// <summary>Net mass that left through vents and nozzle.</summary>
    public required Mass Left { get; init; }

    /// <summary>(present - initial - burnt + left) over (initial + burnt) [-].</summary>
    public required double RelativeMassResidual { get; init; }

    /// <summary>
    /// The same for energy: internal energy, enthalpy of fragments and outflow, wall heat, work on the joint [-].
    /// </summary>
    public required double RelativeEnergyResidual { get; init; }
}
