using System.Collections;
using System.Reflection;
using UnitsNet;

namespace Staging.Core.Tests.Plans;

/// <summary>
/// Compares two models property by property, to the last bit and the unit. The equality of records does not do: curves, tables and lists
/// compare by reference.
/// </summary>
internal static class SameModel
{
    /// <summary>Where two models differ; empty when they are the same.</summary>
    public static IEnumerable<string> Differences(object? a, object? b, string path = "")
    {
        if (a is null || b is null || a.GetType() != b.GetType())
            return Equals(a, b) ? [] : [$"{path}: {a ?? "null"} and {b ?? "null"}"];
        return a switch
        {
            string or double or int or bool or Enum => a.Equals(b) ? [] : [$"{path}: {a} and {b}"],
            IQuantity x when b is IQuantity y => x.Unit.Equals(y.Unit) && (double)x.Value == (double)y.Value ? [] : [$"{path}: {x} and {y}"],
            ReadOnlyMemory<double> x when b is ReadOnlyMemory<double> y => x.Span.SequenceEqual(y.Span) ? [] : [$"{path}: the columns differ"],
            IEnumerable x when b is IEnumerable y => InLists([.. x.Cast<object>()], [.. y.Cast<object>()], path),
            _ => a.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).SelectMany(p => Differences(p.GetValue(a), p.GetValue(b), $"{path}.{p.Name}")),
        };
    }

    private static IEnumerable<string> InLists(object[] a, object[] b, string path) => a.Length != b.Length
        ? [$"{path}: {a.Length} and {b.Length} items"]
        : a.SelectMany((item, i) => Differences(item, b[i], $"{path}[{i}]"));
}
