using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

/// <summary>A disk that fills, a process that dies and a part that is lost or doubled: nothing is counted that was not computed once.</summary>
public class LostPartTests
{
    private static readonly ReliabilityStudy<Oscillator, double> Odds = Oscillator.Study(60);

    private static readonly PartitionedStudy<SweepLine<double>> Points =
        Sweep.AlongInParts(Axis.Even("gap", "mm", 1, 9, 9), (x, _) => x / 3, Sweep.Number("third", "mm"));

    [Theory]
    [InlineData("odds")]
    [InlineData("points")]
    public void A_disk_that_fills_is_told_as_it_is_and_the_run_can_be_written_again(string form)
    {
        Action<TextWriter> write = Writer(form);
        string whole = Written(write);
        for (int room = 0; room < whole.Length; room += 1 + whole.Length / 40)
        {
            using var full = new FullDisk(room);
            Assert.Throws<IOException>(() => write(full));
            Assert.Throws<FormatException>(() => Read(form, full.Held));
        }

        Assert.Equal(whole, Written(write));
    }

    [Fact]
    public void A_part_that_is_run_again_after_its_process_died_is_the_same_part()
    {
        var third = new StudyOptions { Part = new StudyPart(3, 4) };
        using var stop = new CancellationTokenSource();
        int seen = 0;
        ReliabilityStudy<Oscillator, double> dies = Odds with
        {
            Model = (m, _) =>
            {
                if (++seen == 7)
                    stop.Cancel();
                return m.Period;
            },
        };
        Assert.ThrowsAny<OperationCanceledException>(() => dies.Run(third with { Threads = 1 }, cancellationToken: stop.Token));
        Assert.Equal(Written(Odds.Run(third).Write), Written(dies.Run(third with { Threads = 1 }).Write));
    }

    [Fact]
    public void A_part_that_is_lost_is_named_and_no_answer_is_given()
    {
        PartResult[] parts = [.. Enumerable.Range(1, 3).Select(k => Points.Run(new StudyOptions { Part = new StudyPart(k, 3) }))];
        PartResult merged = PartResult.Merge(parts[0], parts[2]);
        Assert.Equal("3 to 5", merged.Missing);
        Assert.Contains("3 to 5", Assert.Throws<ArgumentException>(() => Points.Of(merged)).Message, StringComparison.Ordinal);
        ReliabilityRun odd = ReliabilityRun.Merge(Part(1), Part(3));
        Assert.False(odd.IsWhole);
        Assert.Equal(30, odd.Cases);
        Assert.Equal(60, odd.CasesRequested);
    }

    [Fact]
    public void A_part_that_came_twice_is_refused()
    {
        PartResult first = Points.Run(new StudyOptions { Part = new StudyPart(1, 3) });
        Assert.Contains("Case 0 is in two", Assert.Throws<ArgumentException>(() => PartResult.Merge(first, first)).Message, StringComparison.Ordinal);
        Assert.Contains("Case 15 is in two", Assert.Throws<ArgumentException>(() => ReliabilityRun.Merge(Part(1), Part(2), Part(2))).Message, StringComparison.Ordinal);
    }

    private static ReliabilityRun Part(int k) => Odds.Run(new StudyOptions { Part = new StudyPart(k, 4) });

    private static Action<TextWriter> Writer(string form) => form == "odds" ? Odds.Run().Write : Points.Run().Write;

    private static object Read(string form, string text)
    {
        using var reader = new StringReader(text);
        return form == "odds" ? ReliabilityRun.Read(reader) : PartResult.Read(reader);
    }

    private static string Written(Action<TextWriter> write)
    {
        using var text = new StringWriter();
        write(text);
        return text.ToString();
    }

    /// <summary>A writer with room for so many characters.</summary>
    private sealed class FullDisk(int room) : StringWriter
    {
        public string Held => base.ToString();

        public override void Write(char value)
        {
            if (GetStringBuilder().Length >= room)
                throw new IOException("There is not enough space on the disk.");
            base.Write(value);
        }

        public override void Write(string? value)
        {
            foreach (char c in value ?? "")
                Write(c);
        }
    }
}
