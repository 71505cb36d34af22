namespace Staging.Core.Plans.Codecs;

/// <summary>The values of the fields of one record, read and not yet joined.</summary>
internal sealed class FieldValues(int count)
{
    private readonly object?[] values = new object?[count];

    /// <summary>The value of a field, by its number.</summary>
    public object? this[int field]
    {
        get => values[field];
        set => values[field] = value;
    }
}
