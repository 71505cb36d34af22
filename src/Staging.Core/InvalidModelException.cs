using System.Collections.Immutable;

namespace Staging.Core;

/// <summary>Thrown by a solver when <c>Check()</c> reports errors; it carries every finding, not the first.</summary>
public sealed class InvalidModelException : ArgumentException
{
    /// <summary>Makes an exception without findings.</summary>
    public InvalidModelException()
    {
    }

    /// <summary>Makes an exception from a message alone.</summary>
    /// <param name="message">What is wrong.</param>
    public InvalidModelException(string message)
        : base(message)
    {
    }

    /// <summary>Makes an exception from a message and a cause.</summary>
    /// <param name="message">What is wrong.</param>
    /// <param name="innerException">The cause.</param>
    public InvalidModelException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>Makes an exception from the findings of a check.</summary>
    /// <param name="findings">All findings, errors and others.</param>
    public InvalidModelException(ImmutableArray<ModelFinding> findings)
        : base(string.Join('\n', findings.Where(f => f.Severity == FindingSeverity.Error))) =>
        Findings = findings;

    /// <summary>All findings of the check that refused the model.</summary>
    public ImmutableArray<ModelFinding> Findings { get; } = [];

    /// <summary>Throws when any finding is an error.</summary>
    /// <param name="findings">The findings of a check.</param>
    /// <exception cref="InvalidModelException">At least one finding is an error.</exception>
    internal static void ThrowOnError(ImmutableArray<ModelFinding> findings)
    {
        if (findings.Any(f => f.Severity == FindingSeverity.Error))
            throw new InvalidModelException(findings);
    }
}
