using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The result of a gap at a given burn-through.</summary>
public abstract record GapIgnitionResult
{
    private protected GapIgnitionResult()
    {
    }

    /// <summary>The reason in words, with the deciding numbers.</summary>
    public required string Reason { get; init => field = Guard.NotBlank(value); }

    /// <summary>
    /// The calculation behind the answer, for a caller that knows its type; null where there is none. The flight
    /// passes it on unread: see <see cref="StagingReport.Details"/>.
    /// </summary>
    public object? Details { get; init; }

    /// <summary>Chooses by case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="lit">The answer where the upper motor lights.</param>
    /// <param name="notLit">The answer where it does not.</param>
    /// <returns>The answer of the case at hand.</returns>
    public T Match<T>(Func<Lit, T> lit, Func<NotLit, T> notLit) => this is Lit x ? lit(x) : notLit((NotLit)this);

    /// <summary>The upper motor lights.</summary>
    public sealed record Lit : GapIgnitionResult
    {
        /// <summary>Time from burn-through to the start of the upper thrust history [s], 0 to 10 s.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Duration IgnitionLag { get; init => field = Guard.In(value, 0, 10); }

        /// <summary>Time from burn-through until the stages have parted [s], 0 to 10 s.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Duration SeparationLag { get; init => field = Guard.In(value, 0, 10); }
    }

    /// <summary>The upper motor stays cold.</summary>
    public sealed record NotLit : GapIgnitionResult
    {
        /// <summary>
        /// Time from burn-through until the stages have parted [s], 0 to 10 s; null where they stay joined.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Duration? SeparationLag { get; init => field = value is { } t ? Guard.In(t, 0, 10) : null; }
    }
}
