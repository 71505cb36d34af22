namespace Staging.Core.Gaps;

/// <summary>Which way the heat came that lit an upper motor.</summary>
public enum IgnitionPath
{
    /// <summary>Gas and particles that came through the tube behind the front.</summary>
    Gas,

    /// <summary>The flame of burning pieces that had been thrown before the nozzle.</summary>
    Pieces,

    /// <summary>
    /// The jet out of a booster's opening, which reached the throat: motors in contact, or nearly so.
    /// </summary>
    Jet,
}
