using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

/// <summary>Both texts of parts, damaged one line at a time: none of them is read.</summary>
public class StrictTextTests
{
    private static readonly StudyInput<Oscillator> Heavy = Oscillator.MassInput with { Path = "heavy", Spread = Distribution.Uniform(-1, 2) };

    /// <summary>Three inputs of which two scatter alike but for their names, two measures, three outcomes, many refusals.</summary>
    private static readonly ReliabilityStudy<Oscillator, double> Odds = new()
    {
        Inputs = new(new Oscillator(1, 100), [.. Oscillator.Inputs.Inputs, Heavy]),
        Model = (o, _) => o.Mass > 0 ? o.Mass : throw new ArgumentException("No mass."),
        Outcome = mass => mass > 1 ? "heavy\nand slow" : "light",
        Measures = [new Measure<double>("mass", "kg", m => m - 1), new Measure<double>("weight", "N", m => m > 0.3 ? 9.8 * m : null)],
        Cases = 90,
        Seed = 5,
    };

    private static readonly SensitivityStudy<Oscillator> Shares = new() { Inputs = Odds.Inputs, Unit = "-", Model = (o, _) => o.Mass };

    public static TheoryData<string, string> Lines
    {
        get
        {
            var damaged = new TheoryData<string, string>();
            foreach (string form in new[] { "points", "odds" })
            {
                foreach (string word in new[] { "lost", "doubled", "swapped" })
                    damaged.Add(form, word);
            }

            return damaged;
        }
    }

    [Theory]
    [MemberData(nameof(Lines))]
    public void A_line_that_is_lost_doubled_or_swapped_is_told(string form, string damage)
    {
        string[] lines = Text(form).TrimEnd('\n').Split('\n');
        var read = new List<string>();
        for (int i = 0; i < lines.Length - (damage == "swapped" ? 1 : 0); i++)
        {
            string[] other = damage switch
            {
                "lost" => [.. lines[..i], .. lines[(i + 1)..]],
                "doubled" => [.. lines[..(i + 1)], .. lines[i..]],
                _ => [.. lines[..i], lines[i + 1], lines[i], .. lines[(i + 2)..]],
            };
            if (Record.Exception(() => Read(form, string.Join("\n", other) + "\n")) is not FormatException { Message: var message } || !message.StartsWith("Line ", StringComparison.Ordinal))
                read.Add(lines[i]);
        }

        Assert.Empty(read);
    }

    [Theory]
    [InlineData("points")]
    [InlineData("odds")]
    public void The_text_that_is_damaged_there_is_read_whole(string form)
    {
        string text = Text(form);
        Assert.Equal(text, Read(form, text));
        Assert.All(["inputs 3", "spreads 3", "measures ", "range 0 "], word => Assert.Contains(word, text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("points")]
    [InlineData("odds")]
    public void A_digit_that_is_changed_is_told(string form)
    {
        string text = Text(form);
        var read = new List<string>();
        for (int i = 0; i < text.Length; i++)
        {
            if (!char.IsAsciiDigit(text[i]))
                continue;
            string other = text[..i] + (char)('0' + (text[i] - '0' + 1) % 10) + text[(i + 1)..];
            if (Record.Exception(() => Read(form, other)) is not FormatException)
                read.Add($"at {i}: {text[Math.Max(i - 10, 0)..(i + 1)]}");
        }

        Assert.Empty(read);
    }

    [Fact]
    public void A_text_with_other_line_ends_is_the_same_text() =>
        Assert.Equal(Text("odds"), Read("odds", Text("odds").ReplaceLineEndings("\r\n")));

    [Fact]
    public void An_outcome_of_two_lines_comes_back_as_it_was()
    {
        ReliabilityRun run = Odds.Run();
        Assert.Equal(run.Outcomes, ReliabilityRun.Read(new StringReader(Text("odds", run))).Outcomes);
    }

    [Theory]
    [InlineData("refusals 10", "refusals 9", "\"ends\" belongs here, not \"refusal ")]
    [InlineData("refusals 10", "refusals 11", "11 refusals are listed, of ")]
    public void Refusals_are_counted(string line, string other, string says) => Assert.Contains(says, Damaged("odds", line, other), StringComparison.Ordinal);

    [Fact]
    public void A_refused_case_lies_in_the_part()
    {
        ReliabilityRun half = Odds.Run(new StudyOptions { Part = new StudyPart(1, 2) });
        string text = Text("odds", half);
        (long last, string reason) = half.Refusals.Last();
        string other = text.Replace($"refusal {last} {reason}", $"refusal 45 {reason}", StringComparison.Ordinal);
        Assert.NotEqual(text, other);
        Assert.Contains("case 45 is not in this part", Assert.Throws<FormatException>(() => Read("odds", other)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("outcome ", "outcome 9223372036854775807 also_light\noutcome 9223372036854775807 another\noutcome ", "does not add up")]
    [InlineData("\nbin ", "\nbin -9223372036854775807 9223372036854775807\nbin -9223372036854775806 9223372036854775807\nbin ", "does not add up")]
    [InlineData("\nbin ", "\nbin 1 0\nbin ", "a count of 0")]
    [InlineData("inputs 3", "inputs 9223372036854775807", "\"input 4\" belongs here")]
    [InlineData("spreads 3", "spreads 2", "a spread for each input or for none")]
    public void A_hostile_count_is_told_with_its_line(string line, string other, string says) => Assert.Contains(says, Damaged("odds", line, other), StringComparison.Ordinal);

    [Fact]
    public void Ends_and_sums_that_no_values_have_are_told()
    {
        string text = Text("odds");
        string ends = text.Split('\n').First(l => l.StartsWith("ends ", StringComparison.Ordinal));
        string[] words = ends.Split(' ');
        Assert.Contains("ends", Damaged("odds", ends, $"ends {words[1]} {words[3]} {words[2]}"), StringComparison.Ordinal);
        Assert.Contains("ends", Damaged("odds", ends, $"ends {words[1]} {words[2]} 5"), StringComparison.Ordinal);
        Assert.Contains("sums", Damaged("odds", "\nsquares ", "\nsquares 1"), StringComparison.Ordinal);
        Assert.Contains("sums", Damaged("odds", "\nsquares ", "\nsquares F"), StringComparison.Ordinal);
        Assert.Contains("sums", Damaged("odds", "\nsum ", "\nsum 1000"), StringComparison.Ordinal);
    }

    private static string Damaged(string form, string line, string other)
    {
        string text = Text(form);
        int at = text.IndexOf(line, StringComparison.Ordinal);
        Assert.True(at >= 0, text);
        return Assert.Throws<FormatException>(() => Read(form, text[..at] + other + text[(at + line.Length)..])).Message;
    }

    private static string Text(string form) => form == "odds" ? Text(form, Odds.Run()) : Text(form, Shares.VarianceSharesInParts(4, repetitions: 3).Run());

    private static string Text(string form, object run)
    {
        using var writer = new StringWriter();
        if (form == "odds")
            ((ReliabilityRun)run).Write(writer);
        else
            ((PartResult)run).Write(writer);
        return writer.ToString();
    }

    private static string Read(string form, string text) =>
        Text(form, form == "odds" ? ReliabilityRun.Read(new StringReader(text)) : PartResult.Read(new StringReader(text)));
}
