using System.CodeDom.Compiler;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace Staging.Core.Tests.Hygiene.Sources;

/// <summary>The compiled library, and what in it somebody wrote by hand.</summary>
internal static class Compiled
{
    public static Assembly Library => typeof(Guard).Assembly;

    /// <summary>Members of a type that were written in the source, not made up by the compiler.</summary>
    public static IEnumerable<MemberInfo> Written(Type type) =>
        type.GetMembers(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            .Where(m => !IsGenerated(m));

    /// <summary>Members that users of the package can see, accessors left to their property.</summary>
    public static IEnumerable<MemberInfo> Visible(Type type) => Written(type).Where(m => m switch
    {
        MethodBase { IsSpecialName: true, IsConstructor: false } method => method.Name.StartsWith("op_", StringComparison.Ordinal) && IsVisible(method),
        MethodBase method => IsVisible(method),
        FieldInfo field => !field.IsSpecialName && (field.IsPublic || field.IsFamily || field.IsFamilyOrAssembly),
        PropertyInfo property => property.Name != "EqualityContract" && property.GetAccessors(true).Any(IsVisible),
        EventInfo e => IsVisible(e.AddMethod!),
        _ => false,
    });

    public static bool IsGenerated(MemberInfo member)
    {
        for (MemberInfo? m = member; m is not null; m = m.DeclaringType)
        {
            if (m.IsDefined(typeof(CompilerGeneratedAttribute), false) || m.IsDefined(typeof(GeneratedCodeAttribute), false))
                return true;
        }

        return false;
    }

    private static bool IsVisible(MethodBase method) => method.IsPublic || method.IsFamily || method.IsFamilyOrAssembly;
}
