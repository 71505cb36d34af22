using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>One area that was tried.</summary>
public sealed class VentTrial
{
    internal VentTrial(Area totalArea, GapRun run) =>
        (TotalArea, Outcome, PeakGaugePressure, PeakGrainSurface) = (totalArea, run.Outcome, run.PeakGaugePressure, run.PeakGrainSurface);

    /// <summary>Total vent area in each wall.</summary>
    public Area TotalArea { get; }

    /// <summary>How the gap run ended.</summary>
    public GapOutcome Outcome { get; }

    /// <summary>Highest gap pressure above the outside.</summary>
    public Pressure PeakGaugePressure { get; }

    /// <summary>Highest grain surface temperature.</summary>
    public Temperature PeakGrainSurface { get; }

    /// <summary>
    /// Whether the upper motor is lit before the stages part; null for a run that was not solved, which is neither.
    /// </summary>
    internal bool? Lights => Outcome.Lights();

    /// <summary>Area and outcome on one line.</summary>
    /// <returns>For example <c>56.6 mm2: Lit, 4.2 kPa, 812 K</c>.</returns>
    public override string ToString() => Invariant.Text($"{TotalArea.SquareMillimeters:F1} mm2: {Outcome.GetType().Name}, "
        + $"{PeakGaugePressure.Kilopascals:F1} kPa, {PeakGrainSurface.Kelvins:F0} K");
}
