using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>What a search for windows found. Closed: use <see cref="Match"/> to treat both cases.</summary>
public abstract record WindowResult
{
    private protected WindowResult()
    {
    }

    /// <summary>Where it looked.</summary>
    public required Axis Axis { get; init; }

    /// <summary>The answer at every value of the axis.</summary>
    public required ImmutableArray<bool> Scan { get; init; }

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

    /// <summary>It holds somewhere on the axis.</summary>
    public sealed record Found : WindowResult
    {
        /// <summary>The windows, lowest first.</summary>
        public required ImmutableArray<Window> Windows { get; init; }
    }

    /// <summary>
    /// It holds at no value of the axis, so there was nothing to bracket. A window narrower than a step of the axis may
    /// have been missed.
    /// </summary>
    public sealed record None : WindowResult;
}
