using System.Globalization;
using Staging.Core.Campaign.Oracle;

namespace Staging.Core.Campaign;

/// <summary>What a campaign has come to, in one table.</summary>
internal sealed class Tally(string kind, string steps)
{
    private const int Slowest = 3, MostWords = 8;

    private readonly List<Trial> trials = [];

    public IReadOnlyList<Trial> Failed => Ended(Ending.Failed);

    public IReadOnlyList<Trial> NotSolved => Ended(Ending.NotSolved);

    public void Add(IEnumerable<Trial> done) => trials.AddRange(done);

    /// <summary>A hash of all results in the order of their numbers: equal on any processor of one architecture.</summary>
    public string Hash()
    {
        ulong hash = 14695981039346656037;
        foreach (Trial trial in trials)
            hash = (hash ^ trial.Facts.Digest) * 1099511628211;
        return hash.ToString("x16", CultureInfo.InvariantCulture);
    }

    public string Table()
    {
        Trial[] run = [.. trials.Where(t => t.Facts.Ending != Ending.Refused)];
        long[] work = [.. run.Select(t => t.Facts.Steps).Order()];
        var lines = new List<(string Name, string Value)>
        {
            ("tried", $"{trials.Count}"),
            ("answered", By(Ended(Ending.Answered), t => t.Facts.Answer)),
            ("refused", By(Ended(Ending.Refused), t => t.Facts.Refusal!)),
            ("not solved", By(NotSolved, t => t.Facts.Gave!)),
            ("failed", By(Failed, t => t.Facts.Faults[0].Kind)),
            ("steps", work.Length == 0
                ? "none"
                : $"median {work[work.Length / 2]}, 99 % {work[(int)(0.99 * (work.Length - 1))]}, most {work[^1]} ({steps})"),
            ("slowest", string.Join(", ", run.OrderByDescending(t => t.Seconds).Take(Slowest).Select(t =>
                string.Create(CultureInfo.InvariantCulture, $"{t.Seconds:F2} s (case {t.Number})")))),
            ("hash", Hash()),
        };
        return string.Join('\n', lines.Select(l => $"{kind,-8} {l.Name,-11} {l.Value}"));
    }

    private Trial[] Ended(Ending ending) => [.. trials.Where(t => t.Facts.Ending == ending)];

    private static string By(IReadOnlyList<Trial> some, Func<Trial, string> word)
    {
        string[] counts = [.. some.GroupBy(word).OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal)
            .Take(MostWords).Select(g => $"{g.Key} {g.Count()}")];
        return counts.Length == 0 ? "0" : $"{some.Count}: {string.Join(", ", counts)}";
    }
}
