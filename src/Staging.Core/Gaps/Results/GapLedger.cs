using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// Mass and energy of chamber and gap accounted for at the end of a run. The residuals are numerical error and nothing
/// else.
/// </summary>
/// <remarks>Immutable; may be read from any thread.</remarks>
public sealed class GapLedger
{
    /// <summary>
    /// A ledger from what a run started with, was given by its sources, gave out and holds at its end.
    /// </summary>
    internal GapLedger(in GapTotals first, in GapTotals given, in GapTotals left, in GapTotals last)
    {
        InitialMass = Mass.FromKilograms(first.Mass);
        Burnt = Mass.FromKilograms(given.Mass);
        Left = Mass.FromKilograms(left.Mass);
        RelativeMassResidual = (last.Mass - first.Mass - given.Mass + left.Mass) / (first.Mass + given.Mass);
        RelativeEnergyResidual = (last.Energy - first.Energy - given.Energy + left.Energy) / (first.Energy + given.Energy);
    }

    /// <summary>Mass in chamber and gap at burn-through.</summary>
    public Mass InitialMass { get; }

    /// <summary>Mass that the sources have given.</summary>
    public Mass Burnt { get; }

    /// <summary>Net mass that left through vents and nozzle.</summary>
    public Mass Left { get; }

    /// <summary>(present - initial - burnt + left) over (initial + burnt) [-].</summary>
    public double RelativeMassResidual { get; }

    /// <summary>
    /// The same for energy: internal energy, enthalpy of fragments and outflow, wall heat, work on the joint [-].
    /// </summary>
    public double RelativeEnergyResidual { get; }

    /// <summary>The masses and what does not add up.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Invariant.Text($"{InitialMass.Grams:F3} g at first, {Burnt.Grams:F3} g burnt, "
        + $"{Left.Grams:F3} g left; of mass {RelativeMassResidual:E1} and of energy {RelativeEnergyResidual:E1} do not add up.");
}
