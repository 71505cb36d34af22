namespace Staging.Core.Reviews;

/// <summary>Something to mind, with the rule it rests on. It informs; it permits nothing.</summary>
public sealed record Caution
{
    /// <summary>A stable code, for example <c>CAU010</c>.</summary>
    public required string Code { get; init; }

    /// <summary>What it concerns, in the words of the trade.</summary>
    public required string Subject { get; init; }

    /// <summary>Whether the plan stands outside the rule; otherwise the caution is a reminder.</summary>
    public required bool OutsideRule { get; init; }

    /// <summary>The plan's number and the rule's number, in words.</summary>
    public required string Text { get; init; }

    /// <summary>The rule: published code, guidance or common practice.</summary>
    public required Provenance Rule { get; init; }

    /// <summary>The caution on one line.</summary>
    /// <returns>Code, subject and text.</returns>
    public override string ToString() => $"{Code} {Subject}: {Text}";
}
