namespace Staging.Core.GroundTests;

/// <summary>What was seen of a ground test.</summary>
public enum Seen
{
    /// <summary>Not known how it ended; times and trace may still tell.</summary>
    Unknown,

    /// <summary>The upper motor was lit.</summary>
    Lit,

    /// <summary>The upper motor stayed dark; whether the stages parted is not said.</summary>
    NotLit,

    /// <summary>The stages parted, and the upper motor stayed dark.</summary>
    PartedFirst,

    /// <summary>The upper motor stayed dark, and the stages held together.</summary>
    NotLitTogether,
}
