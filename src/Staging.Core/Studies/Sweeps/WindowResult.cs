using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// The result of a search for windows. Without a window the condition held at no value of the axis; a window narrower
/// than a step of the axis may have been missed.
/// </summary>
public sealed class WindowResult
{
    internal WindowResult(Axis axis, ImmutableArray<bool> scan, ImmutableArray<Window> windows) =>
        (Axis, Scan, Windows) = (axis, scan, windows);

    /// <summary>The axis that was searched.</summary>
    public Axis Axis { get; }

    /// <summary>The answer at every value of the axis.</summary>
    public ImmutableArray<bool> Scan { get; }

    /// <summary>The windows, lowest first; empty when there is none.</summary>
    public ImmutableArray<Window> Windows { get; }

    /// <summary>The widest window, by ratio on an axis of factors, else by length; null when there is none.</summary>
    public Window? Widest => Windows.MaxBy(w => Axis.ByFactors ? w.High / w.Low : w.High - w.Low);

    /// <summary>The windows, or that there is none, with the axis.</summary>
    /// <returns>For example <c>vent area [mm2]: 39.1 to 411</c>.</returns>
    public override string ToString() => $"{Axis.Name}: {(Windows.IsEmpty ? $"nowhere from {Ends()}" : string.Join("; ", Windows))}";

    private string Ends() => Invariant.Text($"{Axis.Low:G4} to {Axis.High:G4}");
}
