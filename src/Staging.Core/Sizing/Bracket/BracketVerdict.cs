namespace Staging.Core.Sizing;

/// <summary>Where in a bracket over what is unknown something holds, of the corners that were solved.</summary>
public enum BracketVerdict
{
    /// <summary>In none of them.</summary>
    Nowhere,

    /// <summary>In some: what is unknown decides.</summary>
    InPart,

    /// <summary>In all of them.</summary>
    Throughout,
}
