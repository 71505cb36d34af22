namespace Staging.Core.Flight;

/// <summary>The outline of a nose.</summary>
public enum NoseShape
{
    /// <summary>A straight-sided cone.</summary>
    Cone,

    /// <summary>A tangent ogive: an arc that meets the body without a corner.</summary>
    Ogive,

    /// <summary>A paraboloid of revolution.</summary>
    Parabola,
}
