using System.Reflection;
using System.Reflection.Emit;

namespace Staging.Core.Tests.Hygiene.Sources;

/// <summary>Every type and member that the compiled form of a type mentions: signatures, locals, and the tokens of its method bodies.</summary>
internal static class UsedMembers
{
    private const BindingFlags Declared =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    private static readonly Dictionary<short, OpCode> OpCodes = typeof(OpCodes)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (OpCode)f.GetValue(null)!)
        .ToDictionary(o => o.Value);

    public static IReadOnlyCollection<MemberInfo> Of(Type type)
    {
        var found = new HashSet<MemberInfo>();
        AddType(found, type.BaseType);
        foreach (Type t in type.GetInterfaces())
            AddType(found, t);
        foreach (FieldInfo field in type.GetFields(Declared))
            AddType(found, field.FieldType);
        foreach (MethodBase method in type.GetMethods(Declared).Cast<MethodBase>().Concat(type.GetConstructors(Declared)))
        {
            foreach (ParameterInfo parameter in method.GetParameters())
                AddType(found, parameter.ParameterType);
            AddType(found, (method as MethodInfo)?.ReturnType);
            AddBody(found, method);
        }

        return found;
    }

    private static void AddBody(HashSet<MemberInfo> found, MethodBase method)
    {
        if (method.GetMethodBody() is not { } body || body.GetILAsByteArray() is not { } il)
            return;
        foreach (LocalVariableInfo local in body.LocalVariables)
            AddType(found, local.LocalType);
        Type[] ofType = method.DeclaringType!.GetGenericArguments();
        Type[] ofMethod = method.IsGenericMethod ? method.GetGenericArguments() : [];
        for (int at = 0; at < il.Length;)
        {
            short value = il[at] == 0xFE ? BitConverter.ToInt16([il[at + 1], il[at]]) : il[at];
            OpCode code = OpCodes[value];
            at += code.Size;
            if (code.OperandType is OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineType or OperandType.InlineTok)
                Add(found, method.Module.ResolveMember(BitConverter.ToInt32(il, at), ofType, ofMethod)!);
            at += OperandSize(code.OperandType, il, at);
        }
    }

    private static int OperandSize(OperandType operand, byte[] il, int at) => operand switch
    {
        OperandType.InlineNone => 0,
        OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
        OperandType.InlineVar => 2,
        OperandType.InlineI8 or OperandType.InlineR => 8,
        OperandType.InlineSwitch => 4 + 4 * BitConverter.ToInt32(il, at),
        _ => 4,
    };

    private static void Add(HashSet<MemberInfo> found, MemberInfo member)
    {
        if (member is Type type)
        {
            AddType(found, type);
            return;
        }

        found.Add(member);
        AddType(found, member.DeclaringType);
        if (member is MethodInfo { IsGenericMethod: true } method)
        {
            foreach (Type argument in method.GetGenericArguments())
                AddType(found, argument);
        }
    }

    private static void AddType(HashSet<MemberInfo> found, Type? type)
    {
        while (type is { HasElementType: true })
            type = type.GetElementType();
        if (type is null || type.IsGenericParameter)
            return;
        found.Add(type.IsGenericType ? type.GetGenericTypeDefinition() : type);
        foreach (Type argument in type.GenericTypeArguments)
            AddType(found, argument);
    }
}
