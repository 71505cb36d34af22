namespace Staging.Core.Campaign.Oracle;

/// <summary>How a case ended.</summary>
internal enum Ending
{
    /// <summary>With an answer.</summary>
    Answered,

    /// <summary>Refused with the library's own findings, or by the range of a property.</summary>
    Refused,

    /// <summary>The solver gave up and said why.</summary>
    NotSolved,

    /// <summary>Against a promise of the library.</summary>
    Failed,
}
