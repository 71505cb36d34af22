namespace Staging.Core.Native;

/// <summary>Places of the caller that take what a call gives.</summary>
internal static unsafe class Out
{
    /// <summary>Refuses a place that is not there, and clears one that is, before anything is computed.</summary>
    public static void Clear<T>(T* place, string name)
        where T : unmanaged
    {
        if (place is null)
            throw new ArgumentException($"{name} is NULL: there is no place for the answer.");
        *place = default;
    }

    /// <inheritdoc cref="Clear{T}(T*, string)"/>
    public static void Clear(byte** place, string name) => Clear((nint*)place, name);
}
