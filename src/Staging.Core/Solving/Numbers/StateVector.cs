namespace Staging.Core.Solving;

/// <summary>
/// A state as numbers of a right-hand side: those from one index on are the variables by which derivatives are taken,
/// as many as the number carries.
/// </summary>
/// <param name="values">The state.</param>
/// <param name="first">Index of the first variable; of no meaning for plain numbers.</param>
internal readonly ref struct StateVector<T>(ReadOnlySpan<double> values, int first = 0)
    where T : struct, IReal<T>
{
    /// <summary>The state without derivatives.</summary>
    public ReadOnlySpan<double> Values { get; } = values;

    public T this[int i] => T.Variable(Values[i], i - first);
}
