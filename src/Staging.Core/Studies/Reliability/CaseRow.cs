namespace Staging.Core.Studies;

/// <summary>One case as it comes out of a thread, on its way to the tally.</summary>
internal readonly record struct CaseRow(long Index, double[] Inputs, string Outcome, double?[] Measures, string? Refusal);
