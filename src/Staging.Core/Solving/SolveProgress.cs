using UnitsNet;

namespace Staging.Core.Solving;

/// <summary>How far a run has come. Reported in order, on the thread that solves.</summary>
/// <param name="Time">Time reached on the clock of the run.</param>
/// <param name="Fraction">Share of the longest possible run [-], 0 to 1; 1 is reported once, before the result is
/// returned.</param>
public readonly record struct SolveProgress(Duration Time, double Fraction);
