namespace Staging.Core;

/// <summary>One thing wrong, or doubtful, about a model, found without running it.</summary>
/// <param name="Severity">How much it matters.</param>
/// <param name="Code">A stable code, for example <c>GAP004</c>; texts may improve, codes stay.</param>
/// <param name="Path">Where in the model, for example <c>Vents[1].Station</c>.</param>
/// <param name="Message">What is wrong, with value and unit, and what would fit.</param>
public sealed record ModelFinding(FindingSeverity Severity, string Code, string Path, string Message)
{
    /// <summary>The finding on one line.</summary>
    /// <returns>Code, path and message.</returns>
    public override string ToString() => $"{Code} {Path}: {Message}";
}
