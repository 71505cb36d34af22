namespace Staging.Core.Campaign.Drawing;

/// <summary>How far values are drawn.</summary>
internal enum DrawRange
{
    /// <summary>Sizes, forces and gases of model rockets, with what a builder may get wrong.</summary>
    Realistic,

    /// <summary>Up to both limits that the library accepts, evenly in the logarithm; the limits themselves among them.</summary>
    Edges,
}
