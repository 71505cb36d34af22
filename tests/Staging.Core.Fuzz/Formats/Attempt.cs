using System.Diagnostics.CodeAnalysis;

namespace Staging.Core.Fuzz.Formats;

/// <summary>A text read as a value, or refused as its reader documents; any other exception comes through.</summary>
internal static class Attempt
{
    public static bool Gives<T, TRefusal>(Func<T> read, Action<TRefusal> refused, [NotNullWhen(true)] out T? value)
        where T : class
        where TRefusal : Exception
    {
        value = null;
        try
        {
            value = read();
            return true;
        }
        catch (TRefusal refusal)
        {
            refused(refusal);
            return false;
        }
    }
}
