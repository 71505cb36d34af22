using System.Reflection;

namespace Staging.Core.Tests.Hygiene.Sources;

/// <summary>The name under which the compiler files the documentation of a member (C# specification, annex on documentation comments).</summary>
internal static class DocId
{
    public static string Of(MemberInfo member) => member switch
    {
        Type type => "T:" + TypeName(type),
        FieldInfo field => $"F:{TypeName(field.DeclaringType!)}.{field.Name}",
        EventInfo e => $"E:{TypeName(e.DeclaringType!)}.{e.Name}",
        PropertyInfo property => $"P:{TypeName(property.DeclaringType!)}.{Plain(property.Name)}{Parameters(property.GetIndexParameters())}",
        MethodBase method => "M:" + MethodName(method),
        _ => throw new NotSupportedException(member.MemberType.ToString()),
    };

    private static string MethodName(MethodBase method)
    {
        string name = $"{TypeName(method.DeclaringType!)}.{Plain(method.Name)}";
        if (method.IsGenericMethod)
            name += "``" + method.GetGenericArguments().Length;
        name += Parameters(method.GetParameters());
        return method.Name is "op_Implicit" or "op_Explicit" ? $"{name}~{Use(((MethodInfo)method).ReturnType)}" : name;
    }

    private static string Parameters(ParameterInfo[] parameters) =>
        parameters.Length == 0 ? "" : $"({string.Join(',', parameters.Select(p => Use(p.ParameterType)))})";

    private static string TypeName(Type type) => type.FullName!.Replace('+', '.');

    /// <summary>A type as it stands in a parameter list.</summary>
    private static string Use(Type type)
    {
        if (type.IsByRef)
            return Use(type.GetElementType()!) + "@";
        if (type.IsArray)
            return Use(type.GetElementType()!) + "[" + string.Join(',', Enumerable.Repeat(type.GetArrayRank() > 1 ? "0:" : "", type.GetArrayRank())) + "]";
        if (type.IsGenericParameter)
            return (type.DeclaringMethod is null ? "`" : "``") + type.GenericParameterPosition;
        return type.IsGenericType ? Constructed(type) : TypeName(type);
    }

    /// <summary>Name{A,B}, with the arguments beside the level of nesting that declares them.</summary>
    private static string Constructed(Type type)
    {
        var arguments = new Queue<Type>(type.GetGenericArguments());
        IEnumerable<string> levels = TypeName(type.GetGenericTypeDefinition()).Split('.').Select(level =>
        {
            string[] parts = level.Split('`');
            if (parts.Length == 1)
                return level;
            int count = int.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture);
            return $"{parts[0]}{{{string.Join(',', Enumerable.Range(0, count).Select(_ => Use(arguments.Dequeue())))}}}";
        });
        return string.Join('.', levels);
    }

    private static string Plain(string name) => name.Replace('.', '#');
}
