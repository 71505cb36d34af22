namespace Staging.Core.Solving;

/// <summary>What a table says beyond its ends. There is no default: silent extrapolation is how tables lie.</summary>
internal enum Extrapolation
{
    /// <summary>Zero outside: a thrust history.</summary>
    Zero,

    /// <summary>The end value goes on: a drag coefficient against Mach number.</summary>
    Hold,

    /// <summary>Outside is an error: an atmosphere above its top.</summary>
    Refuse,
}
