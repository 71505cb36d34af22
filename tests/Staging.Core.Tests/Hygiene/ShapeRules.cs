using System.Collections.ObjectModel;
using System.Reflection;
using System.Runtime.CompilerServices;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>What keeps public types immutable; each rule names the offenders of one type.</summary>
internal static class ShapeRules
{
    private const BindingFlags Declared =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    private static readonly HashSet<Type> Mutable =
    [
        typeof(List<>), typeof(IList<>), typeof(ICollection<>), typeof(Collection<>), typeof(Dictionary<,>), typeof(IDictionary<,>),
        typeof(HashSet<>), typeof(ISet<>), typeof(Queue<>), typeof(Stack<>), typeof(Span<>), typeof(Memory<>), typeof(ArraySegment<>),
    ];

    /// <summary>Other public classes, each with its reason.</summary>
    public static Dictionary<string, string> OtherClasses { get; } = new()
    {
        ["Staging.Core.InvalidModelException"] = "an exception has to be a class",
        ["Staging.Core.Plans.PlanFormatException"] = "an exception has to be a class",
        ["Staging.Core.Studies.Measure`1"] = "it is a function with a name, and functions have no value to compare",
        ["Staging.Core.Studies.PartCodec`1"] = "it is a pair of functions, and functions have no value to compare",
    };

    /// <summary>
    /// A public class is a sealed record, a closed union or static; or a result: a sealed class without public constructors whose properties
    /// are get-only. A sealed class may also stand behind an interface of the library
    /// (a law, an atmosphere): it is called, not compared, and <see cref="Changeable"/> watches its fields all the same.
    /// </summary>
    public static IEnumerable<string> OpenClass(Type type)
    {
        bool isRecord = type.GetMethod("<Clone>$") is not null;
        bool isStatic = type.IsAbstract && type.IsSealed;
        bool isClosed = type.IsAbstract && !isStatic && ClosedUnions.IsClosed(type) && ClosedUnions.Cases(type).Count > 0;
        bool isResult = type.IsSealed && type.GetConstructors().Length == 0 && type.GetProperties().All(p => p.SetMethod is not { IsPublic: true });
        bool isService = type.IsSealed && type.GetInterfaces().Any(i => i.Assembly == typeof(Guard).Assembly);
        bool isFine = !type.IsClass || type.IsSubclassOf(typeof(Delegate)) || isStatic || isClosed || isResult || isService || (isRecord && type.IsSealed);
        if (!isFine && !OtherClasses.ContainsKey(type.FullName!))
            yield return $"{type.FullName}: neither a sealed record, nor a result, nor a closed union, nor static";
    }

    public static IEnumerable<string> Changeable(Type type)
    {
        foreach (PropertyInfo property in type.GetProperties(Declared))
        {
            bool settable = property.SetMethod is { IsPrivate: false } set
                && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));
            if (settable)
                yield return $"{type.FullName}.{property.Name}: has a setter that is not init";
        }

        foreach (FieldInfo field in type.GetFields(Declared).Where(f => !f.IsStatic && !f.IsInitOnly && !type.IsEnum))
            yield return $"{type.FullName}: field {field.Name} is not readonly";
    }

    public static IEnumerable<string> MutableCollections(Type type) =>
        from MemberInfo member in Compiled.Visible(type)
        let handed = member switch
        {
            PropertyInfo property => property.PropertyType,
            FieldInfo field => field.FieldType,
            MethodInfo method => method.ReturnType,
            _ => null,
        }
        where handed is not null && IsMutable(handed)
        select $"{type.FullName}.{member.Name}: hands out {handed.Name}";

    public static IEnumerable<string> GlobalState(Type type) =>
        from FieldInfo field in type.GetFields(Declared)
        where field.IsStatic && !field.IsInitOnly && !field.IsLiteral && !Compiled.IsGenerated(field)
        select $"{type.FullName}.{field.Name}: a static field that can change";

    private static bool IsMutable(Type type) =>
        type.IsArray
        || (type.IsGenericType && Mutable.Contains(type.GetGenericTypeDefinition()))
        || type.GenericTypeArguments.Any(IsMutable);
}
