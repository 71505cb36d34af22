using System.Reflection;
using System.Text.RegularExpressions;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>What the documentation of a public type has to say.</summary>
internal static partial class DocRules
{
    /// <summary>The type and each visible member says what it is; parameters and results too.</summary>
    public static IEnumerable<string> Missing(Type type, DocFile docs)
    {
        if (docs.Summary(type).Length == 0)
            yield return $"{type.FullName}: no summary";
        foreach (MemberInfo member in Compiled.Visible(type).Where(m => !IsUnspoken(m) && !docs.IsInheritedFromOutside(m)))
        {
            if (docs.Summary(member).Length == 0)
                yield return $"{Name(member)}: no summary";
            foreach (ParameterInfo parameter in Parameters(member).Where(p => docs.Parameter(member, p.Name!).Length == 0))
                yield return $"{Name(member)}: parameter {parameter.Name} is not described";
            if (member is MethodInfo method && method.ReturnType != typeof(void) && docs.Returns(method).Length == 0)
                yield return $"{Name(member)}: the result is not described";
        }
    }

    /// <summary>Every bare number states its unit: as a suffix of the name, or in square brackets in the text.</summary>
    public static IEnumerable<string> Unitless(Type type, DocFile docs)
    {
        foreach (MemberInfo member in Compiled.Visible(type).Where(m => !IsUnspoken(m) && !docs.IsInheritedFromOutside(m)))
        {
            Type? result = (member as PropertyInfo)?.PropertyType ?? (member as FieldInfo)?.FieldType ?? (member as MethodInfo)?.ReturnType;
            if (!type.IsEnum && IsNumber(result) && !SaysUnit(member.Name, docs.Summary(member) + docs.Returns(member)))
                yield return $"{Name(member)}: a bare number without a unit";
            foreach (ParameterInfo parameter in Parameters(member))
            {
                if (IsNumber(parameter.ParameterType) && !SaysUnit(parameter.Name!, docs.Parameter(member, parameter.Name!)))
                    yield return $"{Name(member)}: parameter {parameter.Name} is a bare number without a unit";
            }
        }
    }

    private static ParameterInfo[] Parameters(MemberInfo member) => member switch
    {
        MethodBase method => method.GetParameters(),
        PropertyInfo property => property.GetIndexParameters(),
        _ => [],
    };

    /// <summary>Whether a type is a floating-point number, or holds one: a column, a pair, a function.</summary>
    private static bool IsNumber(Type? type)
    {
        if (type is null)
            return false;
        return type == typeof(double) || type == typeof(float) || IsNumber(type.GetElementType()) || type.GenericTypeArguments.Any(IsNumber);
    }

    private static bool SaysUnit(string name, string text) => UnitSuffix().IsMatch(name) || UnitInBrackets().IsMatch(text);

    /// <summary>A default constructor without a comment is the compiler's; CS1591 watches over those that are written.</summary>
    private static bool IsUnspoken(MemberInfo member) => member is ConstructorInfo constructor && constructor.GetParameters().Length == 0;

    private static string Name(MemberInfo member) => $"{member.DeclaringType!.FullName}.{member.Name}";

    [GeneratedRegex("_[A-Za-z0-9]+$")]
    private static partial Regex UnitSuffix();

    /// <summary>[Pa], [kg/(m2 s)], [-]; an interval such as [0, 1] is no unit.</summary>
    [GeneratedRegex(@"\[[^\],]+\]")]
    private static partial Regex UnitInBrackets();
}
