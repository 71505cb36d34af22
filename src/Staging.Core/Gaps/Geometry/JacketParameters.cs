using Staging.Core.Discharge;

namespace Staging.Core.Gaps;

/// <summary>A jacket as plain SI numbers.</summary>
/// <param name="Volume">Free volume [m3].</param>
/// <param name="Wall">Wall that takes up heat [m2].</param>
/// <param name="At">Where its parcel begins in the state vector.</param>
/// <param name="Openings">Holes that lead out of it.</param>
internal sealed record JacketParameters(double Volume, double Wall, int At, OutletParameters[] Openings);

/// <summary>Holes that lead from a stirred volume to another or outside.</summary>
/// <param name="Size">The holes.</param>
/// <param name="Jacket">Index of the jacket behind them; -1 outside.</param>
/// <param name="OutsidePressure">Pressure of the air behind them [Pa], where they lead outside.</param>
internal readonly record struct OutletParameters(OrificeSize Size, int Jacket, double OutsidePressure);
