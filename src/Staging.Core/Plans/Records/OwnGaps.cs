namespace Staging.Core.Plans.Records;

/// <summary>
/// The gaps at the top of a plan. Once the gaps of the stages are read, nothing of them is left to keep.
/// </summary>
internal sealed class OwnGaps
{
    /// <summary>The only one; it holds nothing.</summary>
    public static OwnGaps Read { get; } = new();
}
