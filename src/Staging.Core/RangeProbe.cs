namespace Staging.Core;

/// <summary>
/// Reads the ranges that <see cref="Guard"/> checks, so that a range stands in one place: in the property that it
/// belongs to. While a probe is open on a thread, Guard notes the range of a number that lies outside and lets it pass:
/// a record made from numbers outside all ranges tells them all.
/// </summary>
/// <remarks>What is made while a probe is open holds nonsense and is thrown away.</remarks>
internal sealed class RangeProbe : IDisposable
{
    private static readonly ThreadLocal<RangeProbe?> Open = new();

    private readonly List<(string Property, AcceptedRange Range)> noted = [];

    /// <summary>Opens a probe on this thread, where none is open.</summary>
    public RangeProbe() => Open.Value = this;

    /// <summary>What was noted, in the order of the checks.</summary>
    public IReadOnlyList<(string Property, AcceptedRange Range)> Noted => noted;

    /// <summary>Notes a range; false where no probe is open.</summary>
    public static bool Note(string property, AcceptedRange range)
    {
        Open.Value?.noted.Add((property, range));
        return Open.Value is not null;
    }

    /// <summary>Closes the probe.</summary>
    public void Dispose() => Open.Value = null;
}
