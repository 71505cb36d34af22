using System.Collections;
using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace Staging.Core.Campaign.Oracle;

/// <summary>
/// Reads every public property of a result, and of what it holds, down to the numbers: each goes into a hash, and each has to be
/// finite. What a result was made from is left out.
/// </summary>
internal sealed class ResultWalk(Facts facts)
{
    private const int Deepest = 12;

    /// <summary>Inputs that results carry.</summary>
    private static readonly HashSet<string> Left =
        ["Problem", "Plan", "Options", "Model", "Series", "Design", "Source", "Provenance", "EqualityContract"];

    private static readonly ConcurrentDictionary<Type, PropertyInfo[]> Known = new();

    /// <summary>Fowler-Noll-Vo hash of all that was read, 64 bit.</summary>
    public ulong Digest { get; private set; } = 14695981039346656037;

    /// <summary>Reads all of a result; one that is there and tells nothing is a check that cannot fail.</summary>
    public void Read(string name, object? result)
    {
        ulong before = Digest;
        Read(name, result, 0);
        if (Digest == before && result is not IEnumerable)
            facts.Break("nothing read", $"{name} is a {result?.GetType().Name} without a number or a text");
    }

    public void Column(string name, ReadOnlySpan<double> column)
    {
        for (int i = 0; i < column.Length; i++)
        {
            Mix(BitConverter.DoubleToUInt64Bits(column[i]));
            if (!double.IsFinite(column[i]))
            {
                facts.Break("number not finite", string.Create(CultureInfo.InvariantCulture, $"{name}[{i}] is {column[i]}"));
                return;
            }
        }
    }

    public void Text(string name, string text)
    {
        foreach (char c in text)
            Mix(c);
        foreach (string no in (string[])["NaN", "Infinity", "\u221E"])
        {
            if (text.Contains(no, StringComparison.Ordinal))
                facts.Break("text not finite", $"{name}: {text[..Math.Min(text.Length, 200)].ReplaceLineEndings(" ")}");
        }
    }

    private void Read(string name, object? value, int depth)
    {
        switch (value)
        {
            case null:
                Mix(1);
                break;
            case double x:
                Column(name, [x]);
                break;
            case string text:
                Text(name, text);
                break;
            case bool or Enum or int or long or ulong or uint or byte:
                Mix((ulong)Convert.ToInt64(value, CultureInfo.InvariantCulture));
                break;
            case IQuantity quantity:
                Column(name, [(double)quantity.Value]);
                break;
            case ReadOnlyMemory<double> column:
                Column(name, column.Span);
                break;
            case ITuple pair:
                for (int k = 0; k < pair.Length; k++)
                    Read($"{name}.{k + 1}", pair[k], depth + 1);
                break;
            case IEnumerable members:
                int i = 0;
                foreach (object? member in members)
                    Read($"{name}[{i++}]", member, depth + 1);
                break;
            default:
                ReadProperties(name, value, depth);
                break;
        }
    }

    private void ReadProperties(string name, object value, int depth)
    {
        Type type = value.GetType();
        if (depth > Deepest || type.Namespace?.StartsWith("Staging.Core", StringComparison.Ordinal) != true || value is Delegate)
            return;
        foreach (PropertyInfo property in Known.GetOrAdd(type, Readable))
            Read($"{name}.{property.Name}", Value(property, value), depth + 1);
    }

    /// <summary>What a property tells; what it throws comes through as it is.</summary>
    private static object? Value(PropertyInfo property, object of) =>
        property.GetValue(of, BindingFlags.DoNotWrapExceptions, null, null, null);

    private static PropertyInfo[] Readable(Type type) =>
        [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.CanRead && p.GetIndexParameters().Length == 0 && !Left.Contains(p.Name) && !p.PropertyType.IsByRefLike)
            .OrderBy(p => p.Name, StringComparer.Ordinal)];

    private void Mix(ulong bits) => Digest = (Digest ^ bits) * 1099511628211;
}
