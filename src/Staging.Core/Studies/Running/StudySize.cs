namespace Staging.Core.Studies;

/// <summary>The most that one process keeps of a study; more is refused before memory is allocated.</summary>
internal static class StudySize
{
    /// <summary>Points or cases kept at a time: a result of each and the array that holds them.</summary>
    public const long MaxPoints = 1L << 24;

    /// <summary>Numbers kept at a time: 1 GiB of doubles.</summary>
    public const long MaxNumbers = 1L << 27;

    /// <summary>
    /// Refuses more points than <see cref="MaxPoints"/>, or more numbers than <see cref="MaxNumbers"/>.
    /// </summary>
    public static void Check(long points, int numbers)
    {
        long most = Math.Min(MaxPoints, MaxNumbers / Math.Max(numbers, 1));
        if (points > most)
            throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "STU016", "Cases", $"{points} cases, with {numbers} "
                + $"numbers each, are too many to keep at a time; {most} would fit. Take fewer, or run them in parts.")]);
    }
}
