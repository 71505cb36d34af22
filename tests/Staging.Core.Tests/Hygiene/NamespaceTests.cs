namespace Staging.Core.Tests.Hygiene;

/// <summary>Namespace equals folder, and a file is found by the name of a type it declares.</summary>
public class NamespaceTests
{
    [Fact]
    public void Namespace_equals_folder() => Violations.None(Sources().SelectMany(Misplaced));

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

    private static IEnumerable<SourceFile> Sources() =>
        Repository.Library.Concat(Repository.Files("tests", "*.cs")).Where(f => f.Name is not "Program.cs");

    private static IEnumerable<string> Misplaced(SourceFile file)
    {
        string expected = file.Folder[(file.Folder.IndexOf('/', StringComparison.Ordinal) + 1)..].Replace('/', '.');
        if (file.Namespace != expected)
            yield return $"{file.Path}: namespace is {file.Namespace ?? "missing"}, folder says {expected}";
    }

    private static IEnumerable<string> Misnamed(SourceFile file)
    {
        if (!file.Types.Contains(file.Stem))
            yield return $"{file.Path}: declares no type {file.Stem}";
    }
}
