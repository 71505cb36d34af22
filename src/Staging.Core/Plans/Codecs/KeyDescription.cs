namespace Staging.Core.Plans.Codecs;

/// <summary>What is known of one key.</summary>
/// <param name="Key">The key.</param>
/// <param name="Property">The property behind it.</param>
/// <param name="Description">What it means.</param>
/// <param name="Required">Whether it must be there.</param>
/// <param name="BaseUnit">The unit of its range, for a number; otherwise null.</param>
/// <param name="Range">The range its number must keep; null where there is none.</param>
internal sealed record KeyDescription(string Key, string Property, string Description, bool Required, string? BaseUnit,
    AcceptedRange? Range);
