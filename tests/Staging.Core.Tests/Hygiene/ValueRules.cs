using System.Collections;
using System.Collections.Immutable;
using System.Reflection;

namespace Staging.Core.Tests.Hygiene;

/// <summary>What makes two records with equal contents unequal: fields that compare by reference.</summary>
internal static class ValueRules
{
    private const string Function = "it holds a function, and functions are equal only to themselves; its documentation says so";

    private static readonly Type[] ByReference = [typeof(ImmutableArray<>), typeof(ReadOnlyMemory<>), typeof(Memory<>)];

    /// <summary>Records that hold such a field for a reason.</summary>
    public static Dictionary<string, string> Listed { get; } = new()
    {
        ["Staging.Core.Studies.StudyInput`1"] = Function,
        ["Staging.Core.Studies.ReliabilityStudy`2"] = Function,
        ["Staging.Core.Studies.SensitivityStudy`1"] = Function,
        ["Staging.Core.Studies.LearningStudy`1"] = Function,
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
