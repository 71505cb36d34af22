using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>
/// A floor is a folder and a namespace; the drawers within it are folders only, one concept each, and share the namespace of the floor. Five
/// drawers are kernels with a namespace of their own. In tests, namespace equals folder. A file is found by the name of a type it declares.
/// </summary>
public class NamespaceTests
{
    /// <summary>Folders below a floor that have a namespace of their own: kernels that nothing but their floor uses.</summary>
    private static readonly string[] Kernels = ["Gaps/OneDimensional", "Plans/Codecs", "Plans/Reading", "Plans/Records", "Plans/Writing"];

    private const int MaxFilesInFolder = 25;

    [Fact]
    public void Namespace_follows_the_folder() => Violations.None(Sources().SelectMany(Misplaced));

    [Fact]
    public void A_file_is_named_after_a_type_it_declares() => Violations.None(Sources().SelectMany(Misnamed));

    [Theory]
    [InlineData("src/Staging.Core/Gases/Air.cs", "namespace Staging.Core.Discharge;")]
    [InlineData("src/Staging.Core/Gases/Air.cs", "// namespace Staging.Core.Gases;")]
    public void A_misplaced_file_is_caught(string path, string text) => Assert.Single(Misplaced(new SourceFile(path, text)));

    [Fact]
    public void A_misnamed_file_is_caught()
    {
        Assert.Single(Misnamed(new SourceFile("src/Staging.Core/Gases/Air.cs", "public sealed record Water;")));
        Assert.Empty(Misnamed(new SourceFile("src/Staging.Core/Gases/Air.Humid.cs", "public sealed partial record Air;")));
    }

    [Theory]
    [InlineData("src/Staging.Core/Gaps/Joint/Tape.cs", "Staging.Core.Gaps")]
    [InlineData("src/Staging.Core/Gaps/OneDimensional/Ends/Wall.cs", "Staging.Core.Gaps.OneDimensional")]
    [InlineData("src/Staging.Core/Guard.cs", "Staging.Core")]
    [InlineData("tests/Staging.Core.Tests/Gaps/OneDimensional/WallTests.cs", "Staging.Core.Tests.Gaps.OneDimensional")]
    public void Drawers_share_the_namespace_of_their_floor(string path, string expected) => Assert.Equal(expected, NamespaceOf(path));

    [Fact]
    public void No_folder_is_too_full() =>
        Violations.None(from folder in Sources().GroupBy(f => f.Folder)
                        where folder.Count() > MaxFilesInFolder
                        select $"{folder.Key}: {folder.Count()} files, at most {MaxFilesInFolder}");

    private static IEnumerable<SourceFile> Sources() =>
        Repository.Shipped.Concat(Repository.Files("tests", "*.cs")).Where(f => f.Name is not "Program.cs");

    private static IEnumerable<string> Misplaced(SourceFile file)
    {
        string expected = NamespaceOf(file.Path);
        if (file.Namespace != expected)
            yield return $"{file.Path}: namespace is {file.Namespace ?? "missing"}, folder says {expected}";
    }

    private static string NamespaceOf(string path)
    {
        string[] folders = path.Split('/')[1..^1];
        if (!path.StartsWith("src/", StringComparison.Ordinal) || folders.Length < 3)
            return string.Join('.', folders);
        bool kernel = Kernels.Contains($"{folders[1]}/{folders[2]}");
        return string.Join('.', folders[..(kernel ? 3 : 2)]);
    }

    private static IEnumerable<string> Misnamed(SourceFile file)
    {
        if (!file.Types.Contains(file.Stem))
            yield return $"{file.Path}: declares no type {file.Stem}";
    }
}
