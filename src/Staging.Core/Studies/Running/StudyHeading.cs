using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// The properties that parts of one study share, with the design and the distribution of each drawn input as
/// text.
/// </summary>
internal sealed record StudyHeading(
    long Cases, ulong Seed, string Design, ImmutableArray<ColumnName> Inputs, ImmutableArray<string> Spreads,
    ImmutableArray<ColumnName> Measures)
{
    public bool Equals(StudyHeading? other) => other is not null && Differs(other).Length == 0;

    public override int GetHashCode() => HashCode.Combine(Cases, Seed, Design, Inputs.Length, Measures.Length);

    /// <summary>The difference, in words; empty when there is none.</summary>
    public string Differs(StudyHeading other)
    {
        if (Cases != other.Cases)
            return $"{Cases} and {other.Cases} cases";
        if (Seed != other.Seed)
            return $"seeds {Seed} and {other.Seed}";
        if (Design != other.Design)
            return $"designs \"{Excerpt.Of(Design, 250)}\" and \"{Excerpt.Of(other.Design, 250)}\"";
        if (!ColumnName.Same(Inputs, other.Inputs))
            return $"inputs {string.Join(", ", Inputs)} and {string.Join(", ", other.Inputs)}";
        if (!Spreads.SequenceEqual(other.Spreads))
            return Unlike(Spreads, other.Spreads);
        return ColumnName.Same(Measures, other.Measures)
            ? ""
            : $"measures {string.Join(", ", Measures)} and {string.Join(", ", other.Measures)}";
    }

    /// <summary>The heading of parts that are to be merged.</summary>
    /// <exception cref="ArgumentException">There is no part, one is null, or they belong to different
    /// studies.</exception>
    public static StudyHeading Common<TPart>(ImmutableArray<TPart> parts, Func<TPart, StudyHeading> heading)
        where TPart : class
    {
        if (Guard.Set(parts, nameof(parts)).IsEmpty)
            throw new ArgumentException("There is no part to merge.", nameof(parts));
        for (int i = 0; i < parts.Length; i++)
        {
            if (parts[i] is null)
                throw new ArgumentException($"Part {i + 1} is null.", nameof(parts));
            if (heading(parts[0]).Differs(heading(parts[i])) is { Length: > 0 } difference)
                throw new ArgumentException($"The parts belong to different studies: the first and number {i + 1} have {difference}.",
                    nameof(parts));
        }

        return heading(parts[0]);
    }

    /// <summary>The distributions that differ, input by input; there is one for each input or none at all.</summary>
    private static string Unlike(ImmutableArray<string> ours, ImmutableArray<string> theirs)
    {
        if (ours.Length != theirs.Length)
            return $"{ours.Length} and {theirs.Length} spreads";
        (string Our, string Their)[] unlike = [.. ours.Zip(theirs).Where(pair => pair.First != pair.Second)];
        return $"spreads {string.Join("; ", unlike.Select(u => u.Our))} and {string.Join("; ", unlike.Select(u => u.Their))}";
    }
}
