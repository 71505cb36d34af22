using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The result of a gap at a given burn-through: the upper motor lights, or it stays cold.</summary>
public sealed class GapIgnitionResult
{
    private GapIgnitionResult(string reason, Duration? ignitionLag, Duration? separationLag, object? details)
    {
        Reason = Guard.NotBlank(reason, nameof(reason));
        IgnitionLag = ignitionLag is { } lit ? Guard.In(lit, 0, 10, nameof(ignitionLag)) : null;
        SeparationLag = separationLag is { } parted ? Guard.In(parted, 0, 10, nameof(separationLag)) : null;
        Details = details;
    }

    /// <summary>
    /// Time from burn-through to the start of the upper thrust history; null where the motor stays cold.
    /// </summary>
    public Duration? IgnitionLag { get; }

    /// <summary>Time from burn-through until the stages have parted; null where they stay joined.</summary>
    public Duration? SeparationLag { get; }

    /// <summary>The reason in words, with the deciding numbers.</summary>
    public string Reason { get; }

    /// <summary>
    /// The calculation behind the answer, for a caller that knows its type; null where there is none. The flight
    /// passes it on unread: see <see cref="StagingReport.Details"/>.
    /// </summary>
    public object? Details { get; }

    /// <summary>The upper motor lights.</summary>
    /// <param name="ignitionLag">Time from burn-through to the start of the upper thrust history [s], 0 to 10
    /// s.</param>
    /// <param name="separationLag">Time from burn-through until the stages have parted [s], 0 to 10 s.</param>
    /// <param name="reason">The reason in words, with the deciding numbers.</param>
    /// <param name="details">The calculation behind it, if any.</param>
    /// <returns>The result.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    /// <exception cref="ArgumentException">The reason is blank.</exception>
    public static GapIgnitionResult Lit(Duration ignitionLag, Duration separationLag, string reason, object? details = null) =>
        new(reason, ignitionLag, separationLag, details);

    /// <summary>The upper motor stays cold.</summary>
    /// <param name="separationLag">Time from burn-through until the stages have parted [s], 0 to 10 s; null where they
    /// stay joined.</param>
    /// <param name="reason">The reason in words, with the deciding numbers.</param>
    /// <param name="details">The calculation behind it, if any.</param>
    /// <returns>The result.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    /// <exception cref="ArgumentException">The reason is blank.</exception>
    public static GapIgnitionResult NotLit(Duration? separationLag, string reason, object? details = null) =>
        new(reason, null, separationLag, details);
}
