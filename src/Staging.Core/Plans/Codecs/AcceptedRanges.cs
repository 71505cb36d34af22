using System.Collections.Immutable;

namespace Staging.Core.Plans.Codecs;

/// <summary>
/// The ranges that a record accepts, asked of the record itself, so that they stand in one place only. It is made once
/// with a number below every range in each numeric property; the first property to refuse quotes its range and is given
/// its middle; and so on until nothing refuses.
/// </summary>
/// <param name="Range">The range of each field, by its number; null where it has none.</param>
/// <param name="Sample">The record that was accepted in the end. It never reaches a plan.</param>
internal sealed record AcceptedRanges<T>(ImmutableArray<AcceptedRange?> Range, T Sample)
{
    /// <summary>Asks a record.</summary>
    /// <param name="fields">Its fields.</param>
    /// <param name="join">Makes the record.</param>
    public static AcceptedRanges<T> Ask(ImmutableArray<Field<T>> fields, Func<FieldValues, T> join)
    {
        var range = new AcceptedRange?[fields.Length];
        var values = new FieldValues(fields.Length);
        foreach (Field<T> field in fields)
            field.SetProbe(values);
        while (true)
        {
            try
            {
                return new AcceptedRanges<T>([.. range], join(values));
            }
            catch (ArgumentException refusal)
                when (AcceptedRange.Of(refusal) is { } accepted && Refused(refusal, fields, range) is { } number)
            {
                range[number] = accepted;
                fields[number].SetInside(values, accepted);
            }
        }
    }

    /// <summary>
    /// Whether a refusal is about a field: a property by its name, an argument of a factory by the same name or the
    /// key.
    /// </summary>
    public static bool Names(ArgumentException refusal, Field<T> field) =>
        string.Equals(refusal.ParamName, field.Property, StringComparison.OrdinalIgnoreCase) || refusal.ParamName == field.Key;

    private static int? Refused(ArgumentException refusal, ImmutableArray<Field<T>> fields, AcceptedRange?[] range)
    {
        for (int i = 0; i < fields.Length; i++)
        {
            if (range[i] is null && Names(refusal, fields[i]))
                return i;
        }

        return null;
    }
}
