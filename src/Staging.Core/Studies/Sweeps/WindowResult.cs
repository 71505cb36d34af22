using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>What a search for windows found. Closed: use <see cref="Match"/> to treat both cases.</summary>
public abstract class WindowResult
{
    private protected WindowResult(Axis axis, ImmutableArray<bool> scan) => (Axis, Scan) = (axis, scan);

    /// <summary>Where it looked.</summary>
    public Axis Axis { get; }

    /// <summary>The answer at every value of the axis.</summary>
    public ImmutableArray<bool> Scan { get; }

    /// <summary>The widest window, by ratio on an axis of factors, else by length; null when there is none.</summary>
    public Window? Widest =>
        this is Found { Windows: var windows } ? windows.MaxBy(w => Axis.ByFactors ? w.High / w.Low : w.High - w.Low) : null;

    /// <summary>Treats both cases.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="found">For one or more windows.</param>
    /// <param name="none">For no window.</param>
    /// <returns>The answer of the case that holds.</returns>
    public T Match<T>(Func<Found, T> found, Func<None, T> none) => this switch
    {
        Found x => found(x),
        None x => none(x),
        _ => throw new InvalidOperationException($"Unknown result {GetType().Name}."),
    };

    /// <summary>The windows, or that there is none, with the axis.</summary>
    /// <returns>For example <c>vent area [mm2]: 39.1 to 411</c>.</returns>
    public override string ToString() =>
        $"{Axis.Name}: {Match(found => string.Join("; ", found.Windows), none => $"nowhere from {Ends()}")}";

    private string Ends() => Invariant.Text($"{Axis.Low:G4} to {Axis.High:G4}");

    /// <summary>It holds somewhere on the axis.</summary>
    public sealed class Found : WindowResult
    {
        internal Found(Axis axis, ImmutableArray<bool> scan, ImmutableArray<Window> windows)
            : base(axis, scan) => Windows = windows;

        /// <summary>The windows, lowest first.</summary>
        public ImmutableArray<Window> Windows { get; }
    }

    /// <summary>
    /// It holds at no value of the axis, so there was nothing to bracket. A window narrower than a step of the axis may
    /// have been missed.
    /// </summary>
    public sealed class None : WindowResult
    {
        internal None(Axis axis, ImmutableArray<bool> scan)
            : base(axis, scan)
        {
        }
    }
}
