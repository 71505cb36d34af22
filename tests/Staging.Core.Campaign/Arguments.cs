using System.Globalization;
using Staging.Core.Campaign.Drawing;
using Staging.Core.Campaign.Subjects;

namespace Staging.Core.Campaign;

/// <summary>What the command line asks for.</summary>
internal sealed record Arguments
{
    public const string Usage = """
        --kind gaps|flights|plans|studies|tests   what is tried; left out, all of them one after the other
        --model displacement|stirred|resolved   gaps of this model only; those of another one are passed by
        --count N      how many cases of each kind, those passed by included (100)
        --first N      number of the first (0)
        --seed N       seed (1)
        --thorough N   one case of N is run a second time, and asked for all that a result computes on demand (1)
        --range realistic|edges   how far values are drawn (realistic)
        --minutes N    begins no further cases of a kind after so many minutes (no limit); the hash is that of the cases tried
        --threads N    threads (1); the answers do not depend on it
        --found DIR    where failing cases are written, shrunk (artifacts/campaign)
        --replay PATH  runs kept cases instead: a file, or a folder of them
        """;

    public string? Kind { get; private set; }

    public string? Model { get; private set; }

    public long Count { get; private set; } = 100;

    public long First { get; private set; }

    public ulong Seed { get; private set; } = 1;

    public long Thorough { get; private set; } = 1;

    public DrawRange Range { get; private set; }

    public long Minutes { get; private set; } = long.MaxValue;

    public int Threads { get; private set; } = 1;

    public string Found { get; private set; } = "artifacts/campaign";

    public string? Replay { get; private set; }

    /// <summary>Whether a case is one of those that are run twice and asked for everything.</summary>
    public bool IsThorough(long number) => number % Thorough == 0;

    /// <exception cref="FormatException">Words that are none of these.</exception>
    public static Arguments Of(string[] words)
    {
        var asked = new Arguments();
        for (int i = 0; i < words.Length; i += 2)
        {
            if (i + 1 == words.Length)
                throw new FormatException($"{words[i]} has no value.");
            asked.Take(words[i], words[i + 1]);
        }

        return asked;
    }

    private void Take(string name, string value)
    {
        switch (name)
        {
            case "--kind":
                Kind = value;
                break;
            case "--model":
                Model = GapSubject.Models.Contains(value)
                    ? value
                    : throw new FormatException($"--model {value}: it is one of {string.Join(", ", GapSubject.Models)}.");
                break;
            case "--count":
                Count = Whole(name, value);
                break;
            case "--first":
                First = Whole(name, value);
                break;
            case "--seed":
                Seed = (ulong)Whole(name, value);
                break;
            case "--thorough":
                Thorough = Math.Max(1, Whole(name, value));
                break;
            case "--range":
                Range = Enum.TryParse(value, ignoreCase: true, out DrawRange range) && Enum.IsDefined(range)
                    ? range
                    : throw new FormatException($"--range {value}: it is realistic or edges.");
                break;
            case "--minutes":
                Minutes = Whole(name, value);
                break;
            case "--threads":
                Threads = (int)Math.Clamp(Whole(name, value), 1, 64);
                break;
            case "--found":
                Found = value;
                break;
            case "--replay":
                Replay = value;
                break;
            default:
                throw new FormatException($"There is no {name}.");
        }
    }

    private static long Whole(string name, string value) =>
        long.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out long n)
            ? n
            : throw new FormatException($"{name} {value}: a whole number belongs here.");
}
