using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Reviews;

/// <summary>A change to a gap that stays cold, and what the changed gap did.</summary>
/// <remarks>
/// It was run with nominal numbers, as the gap itself was: it says where to look, not that it will do.
/// </remarks>
public sealed class TriedChange
{
    internal TriedChange(string change, GapRun run) => (Change, Run) = (change, run);

    /// <summary>What was changed.</summary>
    public string Change { get; }

    /// <summary>The run of the changed gap.</summary>
    public GapRun Run { get; }

    /// <summary>Change and result on one line.</summary>
    /// <returns>For example <c>a joint of 40 N instead of 20 N: lights after 21.3 ms</c>.</returns>
    public override string ToString() => $"{Change}: {Result}";

    private static string Short(TemperatureDelta shortfall) => Invariant.Text($"the grain surface {shortfall.Kelvins:F0} K short");

    private string Result => Run.Outcome switch
    {
        GapOutcome.Lit { MarginToSeparation: { Seconds: < 0 } late } lit => Invariant.Text(
            $"lights after {lit.Time.Milliseconds:F1} ms, but {-late.Milliseconds:F1} ms after the joint opened"),
        GapOutcome.Lit { MarginToSeparation: { } margin } lit => Invariant.Text(
            $"lights after {lit.Time.Milliseconds:F1} ms, {margin.Milliseconds:F1} ms before the joint opens"),
        GapOutcome.Lit lit => Invariant.Text($"lights after {lit.Time.Milliseconds:F1} ms; the joint holds"),
        GapOutcome.PushedApart apart => Invariant.Text($"stays cold: pushed apart after {apart.Time.Milliseconds:F1} ms, ")
            + Short(apart.SurfaceShortfall),
        GapOutcome.VentedAway vented => Invariant.Text($"stays cold: {vented.ProductsAtNozzle:P0} products at the nozzle at most, ")
            + Short(vented.SurfaceShortfall),
        GapOutcome.TooCool cool => $"stays cold: {Short(cool.SurfaceShortfall)}",
        GapOutcome.DidNotReach far => Invariant.Text(
            $"stays cold: the front ends {far.FrontRemaining.Millimeters:F0} mm short of the last vent"),
        GapOutcome other => $"not known: {other.Cause}",
    };
}
