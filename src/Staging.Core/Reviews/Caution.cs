namespace Staging.Core.Reviews;

/// <summary>Something to mind, with the rule it rests on. It informs; it permits nothing.</summary>
public sealed class Caution
{
    internal Caution(string code, string subject, bool outsideRule, string text, Provenance rule) =>
        (Code, Subject, OutsideRule, Text, Rule) = (code, subject, outsideRule, text, rule);

    /// <summary>A stable code, for example <c>CAU010</c>.</summary>
    public string Code { get; }

    /// <summary>What it concerns, in the words of the trade.</summary>
    public string Subject { get; }

    /// <summary>Whether the plan stands outside the rule; otherwise the caution is a reminder.</summary>
    public bool OutsideRule { get; }

    /// <summary>The plan's number and the rule's number, in words.</summary>
    public string Text { get; }

    /// <summary>The rule: published code, guidance or common practice.</summary>
    public Provenance Rule { get; }

    /// <summary>The caution on one line.</summary>
    /// <returns>Code, subject and text.</returns>
    public override string ToString() => $"{Code} {Subject}: {Text}";
}
