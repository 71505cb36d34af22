using System.Collections.ObjectModel;
using System.Reflection;
using System.Runtime.CompilerServices;

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

    /// <summary>
    /// A public class is sealed, a closed union or static. A record is the usual form; a sealed class is right where equality of values
    /// means nothing (a run with its course, a table), and <see cref="Changeable"/> watches its fields all the same.
    /// </summary>
    public static IEnumerable<string> OpenClass(Type type)
    {
        bool isRecord = type.GetMethod("<Clone>$") is not null;
        bool isClosed = isRecord && ClosedUnions.IsClosed(type);
        if (type.IsClass && !type.IsSealed && !isClosed)
            yield return $"{type.FullName}: neither sealed, nor a closed union, nor static";
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
