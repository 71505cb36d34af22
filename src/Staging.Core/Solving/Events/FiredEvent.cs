namespace Staging.Core.Solving;

/// <summary>One root of one event function, at the time [s] where it was located.</summary>
internal readonly record struct FiredEvent(int Index, double Time);
