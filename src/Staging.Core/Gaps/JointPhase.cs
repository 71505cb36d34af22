namespace Staging.Core.Gaps;

/// <summary>What the joint does.</summary>
internal enum JointPhase
{
    /// <summary>It holds: nothing moves.</summary>
    Held,

    /// <summary>It slides over its engaged length.</summary>
    Slides,

    /// <summary>It has opened: the bodies part, and the gap vents through the annulus between them.</summary>
    Open,
}
