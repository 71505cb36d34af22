using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>Every benchmark answers a question that benchmarks/README.md states.</summary>
public class BenchmarkTests
{
    private const string Attribute = "[Benchmark";

    [Fact]
    public void Every_benchmark_class_has_its_question() =>
        Violations.None(Unasked(
            Repository.Files("benchmarks", "*.cs"),
            File.ReadAllText(Path.Combine(Repository.Root, "benchmarks", "README.md"))));

    [Fact]
    public void A_benchmark_without_a_question_is_caught()
    {
        SourceFile[] files = [new("benchmarks/B/NewBench.cs", "class NewBench { [Benchmark] void A() { } }"), new("benchmarks/B/Problem.cs", "class Problem;")];
        Assert.Single(Unasked(files, "| `OldBench` | why? |"));
        Assert.Empty(Unasked(files, "| `NewBench` | why? |"));
    }

    private static IEnumerable<string> Unasked(IEnumerable<SourceFile> files, string table) =>
        from file in files
        where file.Code.Contains(Attribute, StringComparison.Ordinal) && !table.Contains($"| `{file.Stem}` |", StringComparison.Ordinal)
        select $"{file.Path}: benchmarks/README.md does not say which question it answers";
}
