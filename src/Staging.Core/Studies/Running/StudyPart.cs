namespace Staging.Core.Studies;

/// <summary>
/// Part k of n of the cases of a study. Parts run on any machine, in any order, and merge to a result bit-identical to
/// the whole.
/// </summary>
public sealed record StudyPart
{
    /// <summary>Makes a part.</summary>
    /// <param name="part">Which part, 1 to the number of parts.</param>
    /// <param name="parts">How many parts, 1 to 1 million.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public StudyPart(int part, int parts)
    {
        Count = Guard.In(parts, 1, 1_000_000, nameof(parts));
        Number = Guard.In(part, 1, parts, nameof(part));
    }

    /// <summary>All cases.</summary>
    public static StudyPart Whole { get; } = new(1, 1);

    /// <summary>Which part, from 1.</summary>
    public int Number { get; }

    /// <summary>How many parts.</summary>
    public int Count { get; }

    /// <summary>The first case of this part, of a number of cases.</summary>
    internal long First(long cases) => (long)((Int128)cases * (Number - 1) / Count);

    /// <summary>One past its last case.</summary>
    internal long End(long cases) => (long)((Int128)cases * Number / Count);
}
