namespace Staging.Core.Plans.Codecs;

/// <summary>
/// How something stands in JSON that is one number in some unit, and so can lie inside or outside a range.
/// </summary>
internal abstract class NumericCodec<T> : Codec<T>
{
    /// <summary>The unit in which ranges are kept; <c>-</c> where there is none.</summary>
    public abstract string BaseUnit { get; }

    /// <summary>The value of a number in the base unit.</summary>
    public abstract T FromBase(double number);

    /// <summary>The number of a value in the base unit.</summary>
    public abstract double ToBase(T value);

    /// <summary>A number as it stands in the text, with its unit.</summary>
    public abstract string Say(T value);

    /// <summary>A range in the unit of a value.</summary>
    public abstract string Say(AcceptedRange range, T value);
}
