namespace Staging.Core.Sizing;

/// <summary>Where in a bracket over what is unknown something holds.</summary>
public enum BracketVerdict
{
    /// <summary>In none of its corners.</summary>
    Nowhere,

    /// <summary>In some: what is unknown decides.</summary>
    InPart,

    /// <summary>In all of them.</summary>
    Throughout,
}
