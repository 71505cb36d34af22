using System.Collections;
using System.Collections.Immutable;
using System.Reflection;

namespace Staging.Core.Tests.Hygiene;

/// <summary>What makes two records with equal contents unequal: fields that compare by reference.</summary>
internal static class ValueRules
{
    private const string Result = "a result, which nobody compares; to be a class";

    private static readonly Type[] ByReference = [typeof(ImmutableArray<>), typeof(ReadOnlyMemory<>), typeof(Memory<>)];

    /// <summary>Floors whose records are not all values yet, each with what is left to do.</summary>
    public static Dictionary<string, string> StillToDo { get; } = new()
    {
        ["Staging.Core.Gases"] = "the shares of a mixture",
        ["Staging.Core.Discharge"] = "openings in series and in parallel, and their flow",
        ["Staging.Core.Fronts"] = "the history of a mass flow",
        ["Staging.Core.Studies"] = "inputs to values, results to classes",
        ["Staging.Core.Sizing"] = "inputs to values, results to classes",
        ["Staging.Core.Reviews"] = "results to classes",
        ["Staging.Core.Flight"] = "results to classes",
    };

    /// <summary>Records that hold such a field for a reason.</summary>
    public static Dictionary<string, string> Listed { get; } = new()
    {
        ["Staging.Core.Gaps.GapRun"] = Result,
        ["Staging.Core.Gaps.GapColumns"] = Result,
        ["Staging.Core.Gaps.GapProfile"] = Result,
        ["Staging.Core.Gaps.GapSnapshot"] = Result,
    };

    /// <summary>The fields of a public sealed record that its equality compares by reference.</summary>
    public static IEnumerable<string> ComparedByReference(Type type)
    {
        if (!type.IsSealed || type.GetMethod("<Clone>$") is null || Listed.ContainsKey(type.FullName!))
            yield break;
        for (Type? t = type; t is not null; t = t.BaseType)
        {
            foreach (FieldInfo field in t.GetFields(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            {
                if (IsByReference(field.FieldType))
                    yield return $"{type.FullName}: {field.Name} is compared by reference; hold an EquatableArray";
            }
        }
    }

    private static bool IsByReference(Type type) => type.IsArray || typeof(Delegate).IsAssignableFrom(type)
        || (type.IsGenericType && ByReference.Contains(type.GetGenericTypeDefinition()))
        || (type.IsClass && type != typeof(string) && typeof(IEnumerable).IsAssignableFrom(type));
}
