using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>One file, one idea: most files are short, a long one has a reason, and no line is so wide that it hides what it says.</summary>
public class FileBudgetTests
{
    private const int MaxLines = 250;
    private const int MaxMedianLines = 80;
    private const int MaxCodeWidth = 140;
    private const int MaxCommentWidth = 120;

    /// <summary>Files that may be longer, each with its reason.</summary>
    private static readonly Dictionary<string, string> Allowed = new()
    {
    };

    [Fact]
    public void No_file_is_longer_than_the_budget() => Violations.None(Repository.Shipped.SelectMany(TooLong));

    [Fact]
    public void The_median_file_is_short()
    {
        double median = Median(Repository.Shipped.Select(f => f.Lines));
        Assert.True(median <= MaxMedianLines, $"The median file has {median} lines.");
    }

    [Fact]
    public void The_list_of_long_files_is_current() =>
        Assert.Empty(Allowed.Keys.Except(Repository.Shipped.Where(f => f.Lines > MaxLines).Select(f => f.Path)));

    [Fact]
    public void A_long_file_is_caught()
    {
        Assert.Single(TooLong(new SourceFile("src/Staging.Core/Gases/Air.cs", new string('\n', MaxLines) + "x")));
        Assert.Empty(TooLong(new SourceFile("src/Staging.Core/Gases/Air.cs", new string('\n', MaxLines - 1) + "x\n")));
        Assert.Equal(2.5, Median([4, 1, 3, 2]));
    }

    [Fact]
    public void No_line_is_wider_than_the_budget() => Violations.None(Repository.Shipped.SelectMany(TooWide));

    [Theory]
    [InlineData(MaxCodeWidth, 0, "")]
    [InlineData(MaxCodeWidth + 1, 1, "")]
    [InlineData(MaxCommentWidth, 0, "    /// ")]
    [InlineData(MaxCommentWidth + 1, 1, "    /// ")]
    public void A_wide_line_is_caught(int width, int violations, string start) =>
        Assert.Equal(violations, TooWide(new SourceFile("src/Staging.Core/Gases/Air.cs", "x\n" + start.PadRight(width, 'x') + "\n")).Count());

    private static IEnumerable<string> TooWide(SourceFile file) =>
        file.Text.Split('\n').Select((line, i) => (Line: line.TrimEnd(), Number: i + 1))
            .Where(l => l.Line.Length > (l.Line.TrimStart().StartsWith("//", StringComparison.Ordinal) ? MaxCommentWidth : MaxCodeWidth))
            .Select(l => $"{file.Path}:{l.Number}: {l.Line.Length} characters");

    private static IEnumerable<string> TooLong(SourceFile file)
    {
        if (file.Lines > MaxLines && !Allowed.ContainsKey(file.Path))
            yield return $"{file.Path}: {file.Lines} lines, at most {MaxLines} without a reason on the list";
    }

    private static double Median(IEnumerable<int> values)
    {
        int[] sorted = [.. values.Order()];
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2.0;
    }
}
