namespace Staging.Core;

/// <summary>How much a finding matters.</summary>
public enum FindingSeverity
{
    /// <summary>Worth knowing; nothing is wrong.</summary>
    Note,

    /// <summary>The run goes ahead, but its result deserves doubt.</summary>
    Warning,

    /// <summary>The model does not hang together; solving refuses.</summary>
    Error,
}
