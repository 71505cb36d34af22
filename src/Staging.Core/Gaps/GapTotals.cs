namespace Staging.Core.Gaps;

/// <summary>Mass [kg] and energy [J] of chamber and gap together, or what of them has left.</summary>
internal readonly record struct GapTotals(double Mass, double Energy);
