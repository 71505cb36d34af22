namespace TheoryFigures;

/// <summary>
/// The tables of the page that compares the models, by the names they have there. About half a minute on one core.
/// </summary>
internal static class ModelTables
{
    public static IReadOnlyDictionary<string, string[]> All() => new Dictionary<string, string[]>
    {
        ["arrivals"] = [.. ModelMap.Arrivals()],
        ["peaks"] = [.. ModelMap.PeakPressures()],
        ["openings"] = [.. ModelMap.Openings()],
        ["refinement"] = [.. Refinement.Table()],
        ["tolerances"] = [.. Tolerances.Table()],
    };
}
