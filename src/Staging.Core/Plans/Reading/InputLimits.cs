namespace Staging.Core.Plans.Reading;

/// <summary>
/// How much a plan may hold, so that no text takes much time or memory. Stated in the guide to the plan file.
/// </summary>
internal static class InputLimits
{
    /// <summary>Characters of a plan, and of one thrust history: 4 million.</summary>
    public const int MaxCharacters = 4_000_000;

    /// <summary>Objects and lists within one another.</summary>
    public const int MaxDepth = 32;

    /// <summary>Values that are read, those of a starting set each time it is used.</summary>
    public const int MaxValues = 1_000_000;

    /// <summary>Starting sets one upon the other.</summary>
    public const int MaxSets = 16;

    /// <summary>Values that are kept as written, for what a check has to say of them: some hundred stages.</summary>
    public const int MaxKept = 20_000;

    /// <summary>Problems that are kept; the others are counted.</summary>
    public const int MaxProblems = 100;
}
