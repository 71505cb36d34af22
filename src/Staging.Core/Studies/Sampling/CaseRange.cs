using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>Cases from First to the one before End.</summary>
internal readonly record struct CaseRange(long First, long End)
{
    /// <summary>Joins adjacent ranges of parts and drops empty ones; ranges that share a case are refused.</summary>
    public static ImmutableArray<CaseRange> Joined(IEnumerable<CaseRange> parts)
    {
        var joined = ImmutableArray.CreateBuilder<CaseRange>();
        foreach (CaseRange next in parts.Where(r => r.First < r.End).OrderBy(r => r.First))
        {
            if (joined.Count > 0 && next.First < joined[^1].End)
                throw new ArgumentException($"Case {next.First} is in two of the parts.", nameof(parts));
            if (joined.Count > 0 && next.First == joined[^1].End)
                joined[^1] = joined[^1] with { End = next.End };
            else
                joined.Add(next);
        }

        return joined.ToImmutable();
    }

    public bool Holds(long index) => First <= index && index < End;

    /// <summary>The cases missing from joined ranges, in words; empty when none is missing.</summary>
    public static string Missing(ImmutableArray<CaseRange> joined, long cases)
    {
        var missing = new List<string>();
        long next = 0;
        foreach (CaseRange held in joined.Append(new CaseRange(cases, cases)))
        {
            if (next < held.First)
                missing.Add(next + 1 == held.First ? $"{next}" : $"{next} to {held.First - 1}");
            next = held.End;
        }

        return string.Join(", ", missing);
    }
}
