using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>One area that was tried.</summary>
/// <param name="TotalArea">Total vent area.</param>
/// <param name="Outcome">How the gap run ended.</param>
/// <param name="PeakGaugePressure">Highest gap pressure above the outside.</param>
/// <param name="PeakGrainSurface">Highest grain surface temperature.</param>
public sealed record VentTrial(Area TotalArea, GapOutcome Outcome, Pressure PeakGaugePressure, Temperature PeakGrainSurface);
