using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Staging.Core.Plans.Codecs;

/// <summary>Where the description of a record lists its keys, in the order in which they are written.</summary>
internal sealed class FieldList<TRecord>
{
    private readonly ImmutableArray<Field<TRecord>>.Builder fields = ImmutableArray.CreateBuilder<Field<TRecord>>();

    /// <summary>The keys listed so far.</summary>
    public ImmutableArray<Field<TRecord>> All => fields.ToImmutable();

    /// <summary>What is made to learn the ranges; null where that is the record itself.</summary>
    public Func<FieldValues, object>? AskedForRanges { get; private set; }

    /// <summary>
    /// Names the part that checks the numbers, where the record computes with them and so cannot be made from numbers
    /// outside their ranges.
    /// </summary>
    public void AskForRanges(Func<FieldValues, object> part) => AskedForRanges = part;

    /// <summary>A key that must be there.</summary>
    /// <param name="key">The key.</param>
    /// <param name="codec">How its value stands in JSON.</param>
    /// <param name="get">The property, as <c>x => x.Property</c>.</param>
    /// <param name="description">What it means.</param>
    /// <param name="getter">Filled in by the compiler: the property's name is its last word.</param>
    /// <returns>The key, to fetch its value with.</returns>
    public Field<TRecord, TValue> Required<TValue>(
        string key, Codec<TValue> codec, Func<TRecord, TValue> get, string description,
        [CallerArgumentExpression(nameof(get))] string getter = "") =>
        Add(new Field<TRecord, TValue>(fields.Count, key, PropertyIn(getter), description, true, codec, get, default!));

    /// <summary>A key that may be left out.</summary>
    /// <param name="key">The key.</param>
    /// <param name="codec">How its value stands in JSON.</param>
    /// <param name="get">The property, as <c>x => x.Property</c>.</param>
    /// <param name="absent">The value that its absence stands for.</param>
    /// <param name="description">What it means, and what its absence means.</param>
    /// <param name="getter">Filled in by the compiler: the property's name is its last word.</param>
    /// <returns>The key, to fetch its value with.</returns>
    public Field<TRecord, TValue> Optional<TValue>(
        string key, Codec<TValue> codec, Func<TRecord, TValue> get, TValue absent, string description,
        [CallerArgumentExpression(nameof(get))] string getter = "") =>
        Add(new Field<TRecord, TValue>(fields.Count, key, PropertyIn(getter), description, false, codec, get, absent));

    /// <summary>A number that may be left out; its absence is null.</summary>
    /// <param name="key">The key.</param>
    /// <param name="codec">How the number stands in JSON.</param>
    /// <param name="get">The property, as <c>x => x.Property</c>.</param>
    /// <param name="description">What it means, and what its absence means.</param>
    /// <param name="getter">Filled in by the compiler: the property's name is its last word.</param>
    /// <returns>The key, to fetch its value with.</returns>
    public Field<TRecord, TValue?> Optional<TValue>(
        string key, NumericCodec<TValue> codec, Func<TRecord, TValue?> get, string description,
        [CallerArgumentExpression(nameof(get))] string getter = "")
        where TValue : struct =>
        Optional(key, new OptionalNumberCodec<TValue>(codec), get, null, description, getter);

    private Field<TRecord, TValue> Add<TValue>(Field<TRecord, TValue> field)
    {
        fields.Add(field);
        return field;
    }

    private static string PropertyIn(string getter) => getter[(getter.LastIndexOf('.') + 1)..].TrimEnd('!');
}
