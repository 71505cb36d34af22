namespace Staging.Core.Solving;

/// <summary>Which sign change of an event function counts, and whether it ends the phase.</summary>
internal readonly record struct EventRule(Crossing Crossing, bool EndsPhase);

/// <summary>The direction in which an event function must cross zero.</summary>
internal enum Crossing
{
    Either,
    Rising,
    Falling,
}
