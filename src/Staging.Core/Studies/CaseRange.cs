using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>Cases from First to the one before End.</summary>
internal readonly record struct CaseRange(long First, long End)
{
    /// <summary>Ranges that touch become one; ranges that share a case are refused.</summary>
    public static ImmutableArray<CaseRange> Joined(IEnumerable<CaseRange> ranges)
    {
        var joined = ImmutableArray.CreateBuilder<CaseRange>();
        foreach (CaseRange next in ranges.OrderBy(r => r.First).ThenBy(r => r.End))
        {
            if (joined.Count > 0 && next.First < joined[^1].End)
                throw new ArgumentException($"Case {next.First} is in two of the parts.", nameof(ranges));
            if (joined.Count > 0 && next.First == joined[^1].End)
                joined[^1] = joined[^1] with { End = next.End };
            else
                joined.Add(next);
        }

        return joined.ToImmutable();
    }
}
