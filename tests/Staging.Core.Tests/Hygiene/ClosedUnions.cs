using System.Reflection;

namespace Staging.Core.Tests.Hygiene;

/// <summary>
/// A closed union is an abstract record, or for a result an abstract class, that only its own nested, sealed cases can derive from, with a Match
/// that names every case. Some of its cases may form a closed union of their own, beside them.
/// </summary>
internal static class ClosedUnions
{
    private const BindingFlags Any = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance;

    /// <summary>Whether no constructor can be reached from outside the assembly; the copy constructor of a record is left out.</summary>
    public static bool IsClosed(Type type) => type.IsAbstract && !type.IsSealed
        && type.GetConstructors(Any).Where(c => !IsCopy(c, type)).All(c => c.IsFamilyAndAssembly || c.IsAssembly || c.IsPrivate);

    /// <summary>The cases: every type of the assembly that derives from the union, those of a union within it instead of that.</summary>
    public static IReadOnlyList<Type> Cases(Type union) =>
        [.. union.Assembly.GetTypes().Where(t => t.BaseType == union).SelectMany(t => t.IsAbstract ? Cases(t) : [t]).OrderBy(t => t.Name, StringComparer.Ordinal)];

    public static IEnumerable<string> Broken(Type union)
    {
        IReadOnlyList<Type> cases = Cases(union);
        if (cases.Count == 0)
            yield return $"{union.FullName}: has no cases";
        foreach (Type c in cases.Where(c => (c.DeclaringType != union && !(union.BaseType == union.DeclaringType && c.DeclaringType == union.DeclaringType)) || !c.IsSealed || !c.IsNestedPublic))
            yield return $"{union.FullName}: case {c.FullName} is not a public, sealed and nested type";
        if (!union.GetMethods().Any(m => m.Name == "Match" && Matches(m, cases)))
            yield return $"{union.FullName}: no Match<T> with one function for each of {string.Join(", ", cases.Select(c => c.Name))}";
    }

    private static bool Matches(MethodInfo method, IReadOnlyList<Type> cases)
    {
        if (!method.IsGenericMethodDefinition || method.GetGenericArguments().Length != 1)
            return false;
        Type result = method.GetGenericArguments()[0];
        Type[] expected = [.. cases.Select(c => typeof(Func<,>).MakeGenericType(c, result))];
        Type[] given = [.. method.GetParameters().Select(p => p.ParameterType)];
        return given.Length == expected.Length && !given.Except(expected).Any() && !expected.Except(given).Any();
    }

    private static bool IsCopy(ConstructorInfo constructor, Type type) =>
        constructor.GetParameters() is [{ } only] && only.ParameterType == type;
}
