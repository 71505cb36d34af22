namespace Staging.Core;

/// <summary>Where a number comes from. Every tabulated, fitted or assumed value in the package carries one.</summary>
public sealed record Provenance
{
    /// <summary>Author, title and year of the source, or the reason for a judgement.</summary>
    public required string Source { get; init => field = Guard.NotBlank(value); }

    /// <summary>Section, table, equation or page within the source; null where there is none.</summary>
    public string? Locator { get; init => field = value is null ? null : Guard.NotBlank(value); }

    /// <summary>How the value was obtained.</summary>
    /// <exception cref="ArgumentOutOfRangeException">None of the kinds of evidence.</exception>
    public required Evidence How { get; init => field = Guard.Defined(value); }
}
