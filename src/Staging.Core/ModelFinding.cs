namespace Staging.Core;

/// <summary>One thing wrong, or doubtful, about a model, found without running it.</summary>
/// <param name="Severity">How much it matters.</param>
/// <param name="Code">A stable code, for example <c>GAP004</c>; texts may improve, codes stay.</param>
/// <param name="Path">Where in the model, for example <c>Vents[1].Station</c>.</param>
/// <param name="Message">What is wrong, with value and unit, and what would fit.</param>
public sealed record ModelFinding(FindingSeverity Severity, string Code, string Path, string Message)
{
    /// <summary>The file that the model was read from; null where there is none.</summary>
    public string? File { get; init; }

    /// <summary>
    /// The value at the path as it is written in that text, cut short; null where it is not one value.
    /// </summary>
    public string? Written { get; init; }

    /// <summary>The finding on one line.</summary>
    /// <returns>Code, file, path, the value as written and message.</returns>
    public override string ToString() =>
        $"{Code} {(File is null ? "" : File + ": ")}{Path}{(Written is null ? "" : $" ({Written})")}: {Message}";
}
