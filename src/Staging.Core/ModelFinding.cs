namespace Staging.Core;

/// <summary>One thing wrong, or doubtful, about a model, found without running it.</summary>
public sealed class ModelFinding
{
    internal ModelFinding(FindingSeverity severity, string code, string path, string message) =>
        (Severity, Code, Path, Message) = (severity, code, path, message);

    /// <summary>How much it matters.</summary>
    public FindingSeverity Severity { get; }

    /// <summary>A stable code, for example <c>GAP004</c>; texts may improve, codes stay.</summary>
    public string Code { get; }

    /// <summary>Where in the model, for example <c>Vents[1].Station</c>.</summary>
    public string Path { get; }

    /// <summary>What is wrong, with value and unit, and what would fit.</summary>
    public string Message { get; }

    /// <summary>The file that the model was read from; null where there is none.</summary>
    public string? File { get; private init; }

    /// <summary>
    /// The value at the path as it is written in that text, cut short; null where it is not one value.
    /// </summary>
    public string? Written { get; private init; }

    /// <summary>The path in the keys of a text, which begin with a small letter.</summary>
    internal string KeyPath => string.Join('.', Path.Split('.').Select(step => char.ToLowerInvariant(step[0]) + step[1..]));

    /// <summary>The finding on one line.</summary>
    /// <returns>Code, file, path, the value as written and message.</returns>
    public override string ToString() =>
        $"{Code} {(File is null ? "" : File + ": ")}{Path}{(Written is null ? "" : $" ({Written})")}: {Message}";

    /// <summary>The same finding, where another model holds this one.</summary>
    internal ModelFinding At(string path) => In(File, path, Written);

    /// <summary>The same finding, by the text that the model was read from.</summary>
    internal ModelFinding In(string? file, string path, string? written) =>
        new(Severity, Code, path, Message) { File = file, Written = written };

    /// <summary>The same finding in other words.</summary>
    internal ModelFinding Saying(string message) => new(Severity, Code, Path, message) { File = File, Written = Written };
}
