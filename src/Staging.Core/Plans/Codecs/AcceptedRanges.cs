using System.Collections.Immutable;

namespace Staging.Core.Plans.Codecs;

/// <summary>
/// The ranges that a record accepts, asked of the record itself, so that they stand in one place only. It is made once
/// with a number below every range in each numeric property, while a <see cref="RangeProbe"/> notes what is checked.
/// </summary>
/// <param name="Range">The range of each field, by its number; null where it has none.</param>
/// <param name="Sample">A record made of numbers inside the ranges. It never reaches a plan.</param>
internal sealed record AcceptedRanges<T>(ImmutableArray<AcceptedRange?> Range, T Sample)
{
    /// <summary>Asks a record.</summary>
    /// <param name="fields">Its fields.</param>
    /// <param name="asked">Makes the part that checks the numbers, or the record itself.</param>
    /// <param name="join">Makes the record.</param>
    public static AcceptedRanges<T> Ask(ImmutableArray<Field<T>> fields, Func<FieldValues, object> asked, Func<FieldValues, T> join)
    {
        var values = new FieldValues(fields.Length);
        foreach (Field<T> field in fields)
            field.SetProbe(values);
        ImmutableArray<AcceptedRange?> ranges = [];
        using (var probe = new RangeProbe())
        {
            asked(values);
            ranges = [.. fields.Select(f => f.BaseUnit is null ? null : probe.Noted.FirstOrDefault(n => f.IsNamed(n.Property)).Range)];
        }

        for (int i = 0; i < fields.Length; i++)
        {
            if (ranges[i] is { } range)
                fields[i].SetInside(values, range);
        }

        return new AcceptedRanges<T>(ranges, join(values));
    }
}
