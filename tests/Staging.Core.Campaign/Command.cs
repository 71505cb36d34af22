using System.Diagnostics;
using Staging.Core.Campaign.Drawing;
using Staging.Core.Campaign.Oracle;
using Staging.Core.Campaign.Subjects;
using static System.FormattableString;

namespace Staging.Core.Campaign;

/// <summary>Runs what the command line asks for, and tells it.</summary>
internal static class Command
{
    /// <summary>Failures of one kind that are shrunk and written; the others are counted.</summary>
    private const int MostWritten = 3;

    private static readonly ISubject[] All =
        [new GapSubject(), new FlightSubject(), new PlanSubject(), new StudySubject(), new GroundTestSubject()];

    public static int Run(string[] words, TextWriter output)
    {
        try
        {
            var asked = Arguments.Of(words);
            if (asked.Replay is { } path)
                return Replay(path, output);
            ISubject[] subjects = asked.Kind is null ? All : [Named(asked.Kind)];
            return subjects.Sum(s => Try(s, asked, output)) == 0 ? 0 : 1;
        }
        catch (Exception e) when (e is FormatException or IOException)
        {
            output.WriteLine(e.Message);
            output.WriteLine(Arguments.Usage);
            return 2;
        }
    }

    private static int Try(ISubject subject, Arguments asked, TextWriter output)
    {
        var tally = new Tally(subject.Name, subject.Steps);
        var parallel = new ParallelOptions { MaxDegreeOfParallelism = asked.Threads };
        long begun = Stopwatch.GetTimestamp();
        foreach (long[] numbers in Numbers(subject, asked).Chunk(asked.Threads))
        {
            if (Stopwatch.GetElapsedTime(begun).TotalMinutes >= asked.Minutes)
                break;
            var block = new Trial[numbers.Length];
            Parallel.For(0, block.Length, parallel, i =>
                block[i] = Trial.Of(
                    subject, () => new Draws(asked.Seed, numbers[i], asked.Range), numbers[i],
                    twice: asked.IsThorough(numbers[i]), thorough: asked.IsThorough(numbers[i])));
            tally.Add(block);
        }

        output.WriteLine(tally.Table());
        foreach (IGrouping<string, Trial> kind in tally.Failed.Concat(tally.NotSolved).GroupBy(t => Wrong(t.Facts)))
        {
            foreach (Trial trial in kind.Take(MostWritten))
                Write(subject, asked, kind.Key, trial, output);
        }

        return tally.Failed.Count;
    }

    /// <summary>The numbers of the cases that are asked for.</summary>
    private static IEnumerable<long> Numbers(ISubject subject, Arguments asked)
    {
        for (long number = asked.First; number < asked.First + asked.Count; number++)
        {
            if (asked.Model is null || subject.ModelOf(new Draws(asked.Seed, number, asked.Range)) == asked.Model)
                yield return number;
        }
    }

    /// <summary>What is wrong with a case, in a word: its first broken promise, or why it was not solved.</summary>
    private static string Wrong(Facts facts) => facts.Faults.Count > 0 ? facts.Faults[0].Kind : $"not solved {facts.Gave}";

    private static void Write(ISubject subject, Arguments asked, string wrong, Trial trial, TextWriter output)
    {
        var draws = new Draws(asked.Seed, trial.Number, asked.Range);
        subject.Make(draws);
        var shrinking = new Shrinking(
            subject,
            facts => facts.Faults.Any(f => f.Kind == wrong) || wrong == $"not solved {facts.Gave}",
            twice: wrong == Trial.Differs);
        Dictionary<string, double> smallest = shrinking.Shrink(draws.Unusual);
        Facts again = Trial.Of(subject, () => new Draws(smallest), trial.Number).Facts;
        Fault told = again.Faults.FirstOrDefault(f => f.Kind == wrong) ?? new Fault(wrong, $"{again.Steps} steps");
        string range = asked.Range == DrawRange.Edges ? "edges" : "realistic";
        string name = Invariant($"{subject.Name}-{wrong.Replace(' ', '-')}-{range}-{asked.Seed}-{trial.Number}.txt");
        string path = Path.Combine(asked.Found, name);
        string found = Invariant($"found as case {trial.Number} of seed {asked.Seed}, range {range}");
        new CaseFile(subject.Name, smallest).Write(path, told, found);
        output.WriteLine($"{path}: {told.Kind}: {told.Detail}");
    }

    private static int Replay(string path, TextWriter output)
    {
        string[] files = Directory.Exists(path) ? [.. Directory.GetFiles(path, "*.txt").Order(StringComparer.Ordinal)] : [path];
        int failed = 0;
        foreach (string file in files)
        {
            var kept = CaseFile.Read(file);
            Facts facts = Trial.Of(Named(kept.Kind), () => kept.Draws, 0).Facts;
            failed += facts.Ending is Ending.Failed or Ending.NotSolved ? 1 : 0;
            string told = facts.Ending switch
            {
                Ending.Failed => string.Join("; ", facts.Faults.Take(3).Select(f => $"{f.Kind}: {f.Detail}")),
                Ending.Refused => $"refused: {facts.Refusal}",
                Ending.NotSolved => $"not solved: {facts.Gave}",
                _ => $"answered: {facts.Answer}",
            };
            output.WriteLine($"{Path.GetFileName(file)}: {told}, {facts.Steps} steps");
        }

        output.WriteLine($"{files.Length} kept cases, {failed} of them fail or are not solved.");
        return failed == 0 ? 0 : 1;
    }

    private static ISubject Named(string kind) => All.FirstOrDefault(s => s.Name == kind)
        ?? throw new FormatException($"There is no kind {kind}; there are {string.Join(", ", All.Select(s => s.Name))}.");
}
