namespace Staging.Core.Gaps;

/// <summary>What the joint does.</summary>
internal enum JointPhase
{
    /// <summary>It holds: nothing moves.</summary>
    Held,

    /// <summary>It slides over its engaged length.</summary>
    Slides,

    /// <summary>
    /// It has opened: the bodies part, and the gap vents through the annulus between them, which soon is as wide as the
    /// tube. Chamber and gap then follow the outside within microseconds while the bodies part over milliseconds, so
    /// this phase takes implicit steps.
    /// </summary>
    Open,
}
