namespace Staging.Core.Solving;

/// <summary>What a table gives beyond its ends. There is no default: silent extrapolation hides errors.</summary>
internal enum Extrapolation
{
    /// <summary>Zero outside: a thrust history.</summary>
    Zero,

    /// <summary>The end value is held: a drag coefficient against Mach number.</summary>
    Hold,

    /// <summary>Outside is an error: an atmosphere above its top.</summary>
    Refuse,
}
