namespace Staging.Core.Gaps;

/// <summary>What can happen in a gap.</summary>
public enum GapEventKind
{
    /// <summary>The first booster's chamber opens forward: time zero.</summary>
    BurnThrough,

    /// <summary>The gap pressure overcomes the joint, which starts to slide.</summary>
    JointMoves,

    /// <summary>The joint comes to rest again.</summary>
    JointRests,

    /// <summary>
    /// The front stands at the last vent: half of what leaves there is products (by mass in a stirred gap).
    /// </summary>
    FrontAtLastVent,

    /// <summary>Half of the gas at the nozzle is products.</summary>
    ProductsAtNozzle,

    /// <summary>Pieces of the booster's web come to the nozzle plane of the upper motor, still burning.</summary>
    PiecesAtNozzle,

    /// <summary>
    /// The grain surface passes its ignition temperature. Not reported of a run that the solver gave up, whatever its
    /// surface has reached: see <see cref="GapRun.Failure"/>.
    /// </summary>
    Lit,

    /// <summary>The last of the booster's propellant has burnt, or the table of a known source has ended.</summary>
    SourceEnded,

    /// <summary>The joint has slid over its whole engagement and opens.</summary>
    JointOpens,

    /// <summary>The source has ended and the gap has bled down.</summary>
    Spent,
}
