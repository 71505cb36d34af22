namespace Staging.Core.Tests.Hygiene;

/// <summary>The arrow between the floors of the house: a floor uses those below it, never one above and never its neighbour.</summary>
internal static class Floors
{
    private const string Root = "Staging.Core";

    private static readonly Dictionary<string, string[]> Below = new()
    {
        [""] = [],
        ["Solving"] = [""],
        ["Gases"] = ["", "Solving"],
        ["Discharge"] = ["", "Solving", "Gases"],
        ["Fronts"] = ["", "Solving", "Gases", "Discharge"],
        ["Gaps"] = ["", "Solving", "Gases", "Discharge", "Fronts"],
        ["Flight"] = ["", "Solving", "Gases", "Discharge", "Fronts"],
        ["Studies"] = ["", "Solving"],
        ["Sizing"] = ["", "Solving", "Gases", "Discharge", "Fronts", "Gaps", "Studies"],
        ["Plans"] = ["", "Solving", "Gases", "Discharge", "Fronts", "Gaps", "Flight", "Studies", "Sizing"],
        ["GroundTests"] = ["", "Solving", "Gases", "Discharge", "Fronts", "Gaps", "Flight", "Studies", "Sizing", "Plans"],
        ["Reviews"] = ["", "Solving", "Gases", "Discharge", "Fronts", "Gaps", "Flight", "Studies", "Sizing", "Plans"],
    };

    public static IEnumerable<string> Names => Below.Keys.Where(k => k.Length > 0);

    /// <summary>The floor of a namespace: empty for the root, null outside the house.</summary>
    public static string? Of(string? name)
    {
        if (name == Root)
            return "";
        return name is not null && name.StartsWith(Root + ".", StringComparison.Ordinal) ? name[(Root.Length + 1)..].Split('.')[0] : null;
    }

    /// <summary>Whether the floor of one namespace may use that of another; namespaces outside the house are not its business.</summary>
    public static bool MayUse(string? user, string? used)
    {
        string? from = Of(user), to = Of(used);
        if (from is null || to is null || from == to)
            return true;
        return Below.TryGetValue(from, out string[]? below) && below.Contains(to);
    }
}
