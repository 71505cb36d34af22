namespace Staging.Core.Plans.Reading;

/// <summary>One reading of one text: the problems found so far, and how the files it names are opened.</summary>
/// <param name="openFile">Opens a curve in a file by the name the plan gives.</param>
/// <param name="file">Name of the file of the text, for the refusal; null where there is none.</param>
internal sealed class ReadContext(Func<string, TextReader>? openFile, string? file = null)
{
    private readonly List<PlanProblem> problems = [];
    private readonly HashSet<(string, string)> known = [];
    private readonly Dictionary<string, string> written = new(StringComparer.Ordinal);
    private int values;

    /// <summary>The first problems, in the order in which they were found.</summary>
    public IReadOnlyList<PlanProblem> Problems => problems;

    /// <summary>
    /// How many problems were reported; one that is met again, where several objects start from one, counts again.
    /// </summary>
    public int Reported { get; private set; }

    /// <summary>How many reports came beyond those kept; one met again counts again.</summary>
    public int NotKept { get; private set; }

    /// <summary>Opens a curve in a file by the name the plan gives; null where a plan may name no file.</summary>
    public Func<string, TextReader>? OpenFile { get; } = openFile;

    /// <summary>The gaps at the top of the plan, from which others may start; null where there are none.</summary>
    public OwnSets? OwnGaps { get; set; }

    /// <summary>Whether keys may be missing: the place is a starting set, which need not be complete.</summary>
    public bool InPart { get; set; }

    /// <summary>Notes a problem, on one line whatever the text holds.</summary>
    public void Report(string path, string message)
    {
        Reported++;
        (string Path, string Message) problem = (OneLine(path), OneLine(message));
        if (problems.Count >= InputLimits.MaxProblems)
            NotKept++;
        else if (known.Add(problem))
            problems.Add(new PlanProblem(problem.Path, problem.Message));
    }

    /// <summary>Counts a value that is looked at.</summary>
    /// <exception cref="PlanFormatException">They are more than a plan may hold.</exception>
    public void CountValue()
    {
        if (++values > InputLimits.MaxValues)
        {
            Report("$", Invariant.Text($"the plan holds more than {InputLimits.MaxValues} values, starting sets filled in."));
            throw Refusal();
        }
    }

    /// <summary>Keeps the value of a key as written, for what a check has to say of it.</summary>
    public void Keep(JsonCursor place)
    {
        if (place.InWords is { } words && written.Count < InputLimits.MaxKept)
            written[place.Path] = words;
    }

    /// <summary>Where a plan comes from, once it is read.</summary>
    public PlanOrigin Origin() => new(file, written);

    /// <summary>The refusal of the text, with all that was found.</summary>
    public PlanFormatException Refusal() => new(file, [.. problems], NotKept);

    private static string OneLine(string text) =>
        text.Any(char.IsControl) ? string.Concat(text.Select(c => char.IsControl(c) ? $"\\u{(int)c:x4}" : c.ToString())) : text;
}
