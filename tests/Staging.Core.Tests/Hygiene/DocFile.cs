using System.Reflection;
using System.Xml.Linq;

namespace Staging.Core.Tests.Hygiene;

/// <summary>The documentation file that the compiler writes beside an assembly.</summary>
internal sealed class DocFile(XDocument file)
{
    private readonly Dictionary<string, XElement> entries = file.Descendants("member").ToDictionary(m => m.Attribute("name")!.Value);

    public static DocFile Of(Assembly assembly) => new(XDocument.Load(Path.ChangeExtension(assembly.Location, ".xml")));

    public static DocFile Parse(string xml) => new(XDocument.Parse(xml));

    public string Summary(MemberInfo member) => Text(member, "summary");

    public string Returns(MemberInfo member) => Text(member, "returns") is { Length: > 0 } text ? text : Text(member, "value");

    public string Parameter(MemberInfo member, string name) =>
        Find(member)?.Elements("param").FirstOrDefault(p => p.Attribute("name")?.Value == name)?.Value.Trim() ?? "";

    /// <summary>Whether the member takes over the documentation of a type outside the library.</summary>
    public bool IsInheritedFromOutside(MemberInfo member) =>
        Entry(member)?.Element("inheritdoc") is not null && Ancestor(member) is { } a && a.Module.Assembly != member.Module.Assembly;

    private string Text(MemberInfo member, string tag) => Find(member)?.Element(tag)?.Value.Trim() ?? "";

    /// <summary>The entry itself, or the one it takes over by inheritdoc.</summary>
    private XElement? Find(MemberInfo member)
    {
        XElement? entry = Entry(member);
        if (entry?.Element("inheritdoc") is not { } inherit)
            return entry;
        if (inherit.Attribute("cref")?.Value is { } cref)
            return entries.GetValueOrDefault(cref);
        return Ancestor(member) is { } ancestor ? Entry(ancestor) : null;
    }

    private XElement? Entry(MemberInfo member) => entries.GetValueOrDefault(DocId.Of(member));

    /// <summary>The member of an interface or a base type that this one implements.</summary>
    private static MemberInfo? Ancestor(MemberInfo member)
    {
        if (member is not MethodInfo and not PropertyInfo || member.DeclaringType is not { } owner)
            return null;
        MethodInfo? method = member as MethodInfo ?? ((PropertyInfo)member).GetMethod;
        MethodInfo? found = owner.IsInterface ? null : owner.GetInterfaces().Select(owner.GetInterfaceMap)
            .SelectMany(map => map.TargetMethods.Zip(map.InterfaceMethods))
            .FirstOrDefault(pair => pair.First == method).Second;
        found ??= method?.GetBaseDefinition() is { } definition && definition != method ? definition : null;
        if (found is null || member is MethodInfo)
            return found;
        return found.DeclaringType!.GetProperties().FirstOrDefault(p => p.GetMethod == found);
    }
}
