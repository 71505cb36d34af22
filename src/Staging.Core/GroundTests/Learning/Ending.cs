namespace Staging.Core.GroundTests;

/// <summary>How a gap ends, as a test can tell it: the classes of outcome.</summary>
internal enum Ending
{
    /// <summary>The upper motor was lit.</summary>
    Lit,

    /// <summary>The stages parted, and it stayed dark.</summary>
    Parted,

    /// <summary>It stayed dark, and the stages held together.</summary>
    Together,
}
