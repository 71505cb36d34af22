using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Plans;

/// <summary>Pages that are made from the code and kept in the repository.</summary>
internal static class Published
{
    /// <summary>Fails when a published page differs from the text that the code gives now, and says where that text is.</summary>
    public static void AssertCurrent(string path, string text)
    {
        string published = Path.Combine(Repository.Root, path);
        if (File.Exists(published) && File.ReadAllText(published).ReplaceLineEndings("\n") == text)
            return;
        string fresh = Path.Combine(AppContext.BaseDirectory, Path.GetFileName(path));
        File.WriteAllText(fresh, text);
        Assert.Fail($"{path} is not current. Look at the change, then: cp {Path.GetRelativePath(Repository.Root, fresh)} {path}");
    }
}
