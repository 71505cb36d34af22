using System.Reflection;
using System.Xml.Linq;

namespace Staging.Core.Tests.Hygiene.Sources;

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

    /// <summary>
    /// The member of an interface or a base type that this one implements. Compared by name and parameters: where a parameter is
    /// passed by in, the compiler puts a bridge method between the two.
    /// </summary>
    private static MemberInfo? Ancestor(MemberInfo member)
    {
        if (member.DeclaringType is not { } owner || (member as MethodInfo ?? (member as PropertyInfo)?.GetMethod) is not { } method)
            return null;
        MethodInfo definition = method.GetBaseDefinition();
        MethodInfo? found = definition != method
            ? definition
            : owner.GetInterfaces().SelectMany(i => i.GetMethods()).FirstOrDefault(m => m.Name == method.Name && SameParameters(m, method));
        return member is MethodInfo ? found : found?.DeclaringType!.GetProperties().FirstOrDefault(p => p.GetMethod == found);
    }

    private static bool SameParameters(MethodInfo a, MethodInfo b) =>
        a.GetParameters().Select(p => p.ParameterType).SequenceEqual(b.GetParameters().Select(p => p.ParameterType));
}
