using System.Collections.Immutable;
using Staging.Core.Discharge;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>Which total vent areas light the upper motor, and which one to drill.</summary>
public sealed record VentAdvice
{
    internal VentAdvice()
    {
    }

    /// <summary>How the area was laid out.</summary>
    public required VentLayout Layout { get; init; }

    /// <summary>Every area tried in the scan, smallest first.</summary>
    public required ImmutableArray<VentTrial> Trials { get; init; }

    /// <summary>The intervals that light, smallest first; empty when none does.</summary>
    public required ImmutableArray<VentWindow> Windows { get; init; }

    /// <summary>The widest interval by ratio of its edges; null when none lights.</summary>
    public VentWindow? Widest => Windows.MaxBy(w => w.FactorToEdges);

    /// <summary>
    /// Total area asked for, in each wall: at equal factors from the lower edge of the widest interval and from its
    /// upper edge, or from what one ring of holes holds if that is less; null when none lights.
    /// </summary>
    public required Area? Recommended { get; init; }

    /// <summary>The recommended area as holes, with the drills next to it; null when none lights.</summary>
    public required HolePattern? Holes { get; init; }

    /// <summary>The reason in words.</summary>
    public required string Reason { get; init; }
}
