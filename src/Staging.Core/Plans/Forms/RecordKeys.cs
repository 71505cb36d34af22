using System.Collections.Immutable;

namespace Staging.Core.Plans.Forms;

/// <summary>Collects the keys of a record. Each call adds a key and returns how to fetch its value from the values read.</summary>
internal sealed class RecordKeys<TRecord>
{
    private readonly List<KeyForm<TRecord>> keys = [];

    /// <summary>All keys, in the order in which they are written.</summary>
    public ImmutableArray<KeyForm<TRecord>> All => [.. keys];

    /// <summary>A key that must be there.</summary>
    public Func<object?[], T> Needs<T>(string name, Form<T> form, Func<TRecord, T> get) =>
        Add<T, T>(new KeyForm<TRecord, T>(name, form, true, r => (true, get(r)), null));

    /// <summary>A key that stands for a stated value when left out.</summary>
    public Func<object?[], T> Or<T>(string name, Form<T> form, Func<TRecord, T> get, T otherwise) =>
        Add<T, T>(new KeyForm<TRecord, T>(name, form, false, r => (true, get(r)), otherwise));

    /// <summary>A key for an object that may be absent.</summary>
    public Func<object?[], T?> May<T>(string name, Form<T> form, Func<TRecord, T?> get)
        where T : class =>
        Add<T, T?>(new KeyForm<TRecord, T>(name, form, false, r => (get(r) is not null, get(r)!), null));

    /// <summary>A key for a number or quantity that may be absent.</summary>
    public Func<object?[], T?> MayNumber<T>(string name, Form<T> form, Func<TRecord, T?> get)
        where T : struct =>
        Add<T, T?>(new KeyForm<TRecord, T>(name, form, false, r => (get(r).HasValue, get(r).GetValueOrDefault()), null));

    private Func<object?[], TOut> Add<T, TOut>(KeyForm<TRecord, T> key)
    {
        int index = keys.Count;
        keys.Add(key);
        return values => (TOut)values[index]!;
    }
}
