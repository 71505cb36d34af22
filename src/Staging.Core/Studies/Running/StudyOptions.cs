namespace Staging.Core.Studies;

/// <summary>
/// How a study is carried out. Nothing here changes a number of the result, but <see cref="Part"/>, which picks the
/// cases.
/// </summary>
public sealed record StudyOptions
{
    /// <summary>All cases on all cores.</summary>
    public static StudyOptions Default { get; } = new();

    /// <summary>Threads, 1 to 1024; null, the default, for as many as the runtime finds fitting.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int? Threads { get; init => field = value is { } n ? Guard.In(n, 1, 1024) : null; }

    /// <summary>Which part of the cases to run; the default is all.</summary>
    public StudyPart Part { get; init => field = Guard.NotNull(value); } = StudyPart.Whole;

    /// <summary>
    /// The clock that remaining times are reckoned by; no result depends on it. The default is the system's.
    /// </summary>
    public TimeProvider Clock { get; init => field = Guard.NotNull(value); } = TimeProvider.System;
}
