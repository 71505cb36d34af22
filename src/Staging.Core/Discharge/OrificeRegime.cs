namespace Staging.Core.Discharge;

/// <summary>What the jet in an opening does.</summary>
public enum OrificeRegime
{
    /// <summary>Equal pressures: no flow.</summary>
    None,

    /// <summary>The downstream pressure is above the critical ratio: the jet is subsonic throughout.</summary>
    Subsonic,

    /// <summary>
    /// The downstream pressure is at or below the critical ratio: the jet is sonic where it is narrowest. Behind a
    /// nozzle, a rounded or a long hole the flow no longer answers to the downstream pressure. Behind a sharp edge it
    /// still does: the jet contracts outside the hole, and contracts less as the downstream pressure falls, so the flow
    /// keeps rising past the critical ratio (<see cref="IDischargeLaw.LevelsOffWhenChoked"/> tells the two apart).
    /// </summary>
    Choked,
}
