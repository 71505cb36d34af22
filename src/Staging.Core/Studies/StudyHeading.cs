using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>Name and unit of a column.</summary>
/// <param name="Name">Name.</param>
/// <param name="Unit">Unit; <c>-</c> where there is none.</param>
public sealed record ColumnName(string Name, string Unit)
{
    /// <summary>Name and unit as the head of a column.</summary>
    /// <returns>For example <c>joint.breakaway [N]</c>.</returns>
    public override string ToString() => $"{Name} [{Unit}]";
}

/// <summary>What parts of one study have in common; in words, how its cases are laid out and how each input that is drawn scatters.</summary>
internal sealed record StudyHeading(
    long Cases, ulong Seed, string Design, ImmutableArray<ColumnName> Inputs, ImmutableArray<string> Spreads, ImmutableArray<ColumnName> Measures)
{
    public bool Equals(StudyHeading? other) => other is not null && Differs(other).Length == 0;

    public override int GetHashCode() => HashCode.Combine(Cases, Seed, Design, Inputs.Length, Measures.Length);

    /// <summary>What is different, in words; empty when nothing is.</summary>
    public string Differs(StudyHeading other)
    {
        if (Cases != other.Cases)
            return $"{Cases} and {other.Cases} cases";
        if (Seed != other.Seed)
            return $"seeds {Seed} and {other.Seed}";
        if (Design != other.Design)
            return $"designs \"{Design}\" and \"{other.Design}\"";
        if (!Inputs.SequenceEqual(other.Inputs))
            return $"inputs {string.Join(", ", Inputs)} and {string.Join(", ", other.Inputs)}";
        if (!Spreads.SequenceEqual(other.Spreads))
            return $"spreads {string.Join("; ", Spreads.Except(other.Spreads))} and {string.Join("; ", other.Spreads.Except(Spreads))}";
        return Measures.SequenceEqual(other.Measures) ? "" : $"measures {string.Join(", ", Measures)} and {string.Join(", ", other.Measures)}";
    }

    /// <summary>The heading of parts that are to be merged.</summary>
    /// <exception cref="ArgumentException">There is no part, or they belong to different studies.</exception>
    public static StudyHeading Common(ImmutableArray<StudyHeading> parts)
    {
        if (parts.IsEmpty)
            throw new ArgumentException("There is no part to merge.", nameof(parts));
        for (int i = 1; i < parts.Length; i++)
        {
            if (parts[0].Differs(parts[i]) is { Length: > 0 } difference)
                throw new ArgumentException($"The parts belong to different studies: the first and number {i + 1} have {difference}.", nameof(parts));
        }

        return parts[0];
    }
}
