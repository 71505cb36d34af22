namespace Staging.Core.Campaign.Oracle;

/// <summary>A broken promise.</summary>
/// <param name="Kind">Which promise, in a word or two: failures are counted and shrunk by it.</param>
/// <param name="Detail">The numbers.</param>
internal sealed record Fault(string Kind, string Detail);
