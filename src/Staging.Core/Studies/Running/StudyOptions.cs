namespace Staging.Core.Studies;

/// <summary>
/// How a study is carried out. Nothing here changes a result except <see cref="Part"/>, which selects the cases.
/// </summary>
public sealed record StudyOptions
{
    /// <summary>All cases on all cores.</summary>
    public static StudyOptions Default { get; } = new();

    /// <summary>Threads, 1 to 1024; null, the default, to let the runtime choose.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int? Threads { get; init => field = value is { } n ? Guard.In(n, 1, 1024) : null; }

    /// <summary>Which part of the cases to run; the default is all.</summary>
    public StudyPart Part { get; init => field = Guard.NotNull(value); } = StudyPart.Whole;

    /// <summary>
    /// The clock for estimates of the remaining time; no result depends on it. The default is the system's.
    /// </summary>
    public TimeProvider Clock { get; init => field = Guard.NotNull(value); } = TimeProvider.System;
}
