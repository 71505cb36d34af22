namespace Staging.Core.Tests.Hygiene.Sources;

/// <summary>The checkout the tests were built from.</summary>
internal static class Repository
{
    /// <summary>The folder that holds the solution file.</summary>
    public static string Root { get; } = Find();

    /// <summary>The sources of the library.</summary>
    public static IReadOnlyList<SourceFile> Library { get; } = Files("src/Staging.Core", "*.cs");

    /// <summary>The sources of all that ships: the library, and its border for other languages.</summary>
    public static IReadOnlyList<SourceFile> Shipped { get; } = Files("src", "*.cs");

    /// <summary>Every file of one kind below a folder; build output left out, paths with forward slashes.</summary>
    public static IReadOnlyList<SourceFile> Files(string folder, string pattern)
    {
        string top = Path.Combine(Root, folder);
        if (!Directory.Exists(top))
            return [];
        return [.. Directory.EnumerateFiles(top, pattern, SearchOption.AllDirectories)
            .Select(f => new SourceFile(Path.GetRelativePath(Root, f).Replace('\\', '/'), File.ReadAllText(f)))
            .Where(f => !f.Path.Split('/').Any(part => part is "bin" or "obj" or "_site"))
            .OrderBy(f => f.Path, StringComparer.Ordinal)];
    }

    private static string Find()
    {
        for (DirectoryInfo? d = new(AppContext.BaseDirectory); d is not null; d = d.Parent)
        {
            if (File.Exists(Path.Combine(d.FullName, "Staging.Core.sln")))
                return d.FullName;
        }

        throw new InvalidOperationException("Staging.Core.sln was not found above the test assembly.");
    }
}
