using System.Globalization;

namespace Staging.Core.Campaign.Oracle;

/// <summary>What is found out about one case: how it ended, every number of its result, broken promises.</summary>
internal sealed class Facts
{
    private readonly List<Fault> faults = [];
    private readonly ResultWalk walk;

    public Facts() => walk = new ResultWalk(this);

    /// <summary>Whether results are asked for what they compute on demand.</summary>
    public required bool Thorough { get; init; }

    /// <summary>How it ended.</summary>
    public Ending Ending => faults.Count > 0 ? Ending.Failed
        : Refusal is not null ? Ending.Refused
        : Gave is not null ? Ending.NotSolved
        : Ending.Answered;

    /// <summary>The answer in a word, for a count of answers.</summary>
    public string Answer { get; set; } = "";

    /// <summary>Steps of the solver, or runs of a study.</summary>
    public long Steps { get; set; }

    /// <summary>Codes of the findings that refused it.</summary>
    public string? Refusal { get; set; }

    /// <summary>Why the solver gave up.</summary>
    public string? Gave { get; set; }

    /// <summary>Broken promises, the first first.</summary>
    public IReadOnlyList<Fault> Faults => faults;

    /// <summary>A hash of all numbers and texts of the result.</summary>
    public ulong Digest => walk.Digest;

    /// <summary>Notes a broken promise.</summary>
    public void Break(string kind, string detail)
    {
        if (faults.Count < 20)
            faults.Add(new Fault(kind, detail));
    }

    /// <summary>Notes a broken promise unless a number lies within a range; not-a-number lies in none.</summary>
    public void Within(string kind, string what, double value, double low, double high)
    {
        if (!(value >= low && value <= high))
            Break(kind, string.Create(CultureInfo.InvariantCulture, $"{what} is {value:R}, outside {low:G9} to {high:G9}"));
    }

    /// <summary>Notes every number and text that can be read from a result: all finite, or absent as null.</summary>
    public void Read(string name, object? result) => walk.Read(name, result);

    /// <summary>Notes a column: all finite.</summary>
    public void Column(string name, ReadOnlySpan<double> column) => walk.Column(name, column);

    /// <summary>Notes a text: no number in it that is none.</summary>
    public void Text(string name, string text) => walk.Text(name, text);
}
