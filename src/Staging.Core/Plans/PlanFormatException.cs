using System.Collections.Immutable;

namespace Staging.Core.Plans;

/// <summary>Thrown when a text is not a plan, or not a series of ground tests. It carries all problems that were
/// found, not the first alone.</summary>
/// <remarks>
/// The message of a single problem is one line; of several, a count and a line each, the first twenty at most.
/// </remarks>
public sealed class PlanFormatException : FormatException
{
    private const int MaxLines = 20;

    /// <summary>Makes an exception without problems.</summary>
    public PlanFormatException()
    {
    }

    /// <summary>Makes an exception from a message alone.</summary>
    /// <param name="message">What is wrong.</param>
    public PlanFormatException(string message)
        : base(message)
    {
    }

    /// <summary>Makes an exception from a message and a cause.</summary>
    /// <param name="message">What is wrong.</param>
    /// <param name="innerException">The cause.</param>
    public PlanFormatException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>Makes an exception from the problems of a text.</summary>
    /// <param name="problems">All problems, in the order in which they were found.</param>
    public PlanFormatException(ImmutableArray<PlanProblem> problems)
        : this(null, problems)
    {
    }

    /// <summary>Makes an exception from the problems of a file.</summary>
    /// <param name="file">Name of the file, put before the message; null where there is none.</param>
    /// <param name="problems">All problems, in the order in which they were found.</param>
    public PlanFormatException(string? file, ImmutableArray<PlanProblem> problems)
        : this(file, problems, 0)
    {
    }

    /// <summary>Makes an exception from the first problems of a file.</summary>
    /// <param name="file">Name of the file, put before the message; null where there is none.</param>
    /// <param name="problems">The problems that were kept, in the order in which they were found.</param>
    /// <param name="moreProblems">How many reports came beyond those kept; one met again counts again.</param>
    internal PlanFormatException(string? file, ImmutableArray<PlanProblem> problems, int moreProblems)
        : base(Text(file, problems, moreProblems)) =>
        (Problems, MoreProblems) = (problems, moreProblems);

    /// <summary>
    /// The problems, in the order in which they were found, a hundred at most; empty when the file could not be read at
    /// all.
    /// </summary>
    public ImmutableArray<PlanProblem> Problems { get; } = [];

    /// <summary>How many reports came beyond those kept; one met again counts again.</summary>
    public int MoreProblems { get; }

    private static string Text(string? file, ImmutableArray<PlanProblem> problems, int more)
    {
        string start = file is null ? "" : file + ": ";
        int all = problems.Length + more;
        if (all == 1)
            return start + problems[0];
        IEnumerable<string> lines = problems.Take(MaxLines).Select(p => "  " + p);
        if (all > MaxLines)
            lines = lines.Append($"  and {all - MaxLines} more");
        return string.Join('\n', lines.Prepend($"{start}{all} problems"));
    }
}
