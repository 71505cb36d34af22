using System.Collections;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;

namespace Staging.Core;

/// <summary>
/// An immutable list that compares by value: two are equal when they hold equal elements in the same order. Inputs keep
/// their lists in it, so that two plans read from one text are equal. Made by a collection expression: <c>[a, b]</c>.
/// </summary>
/// <typeparam name="T">What it holds.</typeparam>
[CollectionBuilder(typeof(EquatableArray), nameof(EquatableArray.Create))]
public readonly struct EquatableArray<T> : IReadOnlyList<T>, IEquatable<EquatableArray<T>>
{
    private readonly ImmutableArray<T> items;

    /// <summary>Wraps an immutable array; a default one counts as empty.</summary>
    /// <param name="items">The elements.</param>
    public EquatableArray(ImmutableArray<T> items) => this.items = items;

    /// <summary>The elements as an immutable array, never a default one.</summary>
    public ImmutableArray<T> Items => items.IsDefault ? [] : items;

    /// <summary>Number of elements [-].</summary>
    public int Length => items.IsDefault ? 0 : items.Length;

    /// <summary>Whether it holds nothing.</summary>
    public bool IsEmpty => Length == 0;

    int IReadOnlyCollection<T>.Count => Length;

    /// <summary>One element.</summary>
    /// <param name="index">Its place, from 0.</param>
    public T this[int index] => items.AsSpan()[index];

    /// <summary>An immutable array as one that compares by value.</summary>
    /// <param name="items">The elements.</param>
    /// <returns>The same elements.</returns>
    [SuppressMessage("Usage", "CA2225:Operator overloads have named alternates", Justification = "the constructor is the other way")]
    public static implicit operator EquatableArray<T>(ImmutableArray<T> items) => new(items);

    /// <summary>Whether both hold equal elements in the same order.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    /// <returns>True where they are equal.</returns>
    public static bool operator ==(EquatableArray<T> left, EquatableArray<T> right) => left.Equals(right);

    /// <summary>Whether they differ in an element or in length.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    /// <returns>True where they differ.</returns>
    public static bool operator !=(EquatableArray<T> left, EquatableArray<T> right) => !left.Equals(right);

    /// <summary>The elements in order.</summary>
    /// <returns>An enumerator that allocates nothing.</returns>
    public ImmutableArray<T>.Enumerator GetEnumerator() => Items.GetEnumerator();

    IEnumerator<T> IEnumerable<T>.GetEnumerator() => ((IEnumerable<T>)Items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => ((IEnumerable)Items).GetEnumerator();

    /// <summary>The elements as a span.</summary>
    /// <returns>A view; nothing is copied.</returns>
    public ReadOnlySpan<T> AsSpan() => items.AsSpan();

    /// <inheritdoc/>
    public bool Equals(EquatableArray<T> other) => AsSpan().SequenceEqual(other.AsSpan(), EqualityComparer<T>.Default);

    /// <inheritdoc/>
    public override bool Equals([NotNullWhen(true)] object? obj) => obj is EquatableArray<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (T item in AsSpan())
            hash.Add(item);
        return hash.ToHashCode();
    }

    /// <summary>The elements between brackets.</summary>
    /// <returns>For example <c>[1, 2]</c>.</returns>
    public override string ToString() => $"[{string.Join(", ", Items)}]";
}

/// <summary>Makes lists that compare by value.</summary>
public static class EquatableArray
{
    /// <summary>A list of some elements; collection expressions come here.</summary>
    /// <typeparam name="T">What it holds.</typeparam>
    /// <param name="items">The elements.</param>
    /// <returns>The list.</returns>
    public static EquatableArray<T> Create<T>(ReadOnlySpan<T> items) => new([.. items]);

    /// <summary>A list of what a sequence gives, for languages without collection expressions.</summary>
    /// <typeparam name="T">What it holds.</typeparam>
    /// <param name="items">The elements.</param>
    /// <returns>The list.</returns>
    public static EquatableArray<T> CreateRange<T>(IEnumerable<T> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        return new([.. items]);
    }
}
