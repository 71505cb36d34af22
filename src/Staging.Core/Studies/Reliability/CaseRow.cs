namespace Staging.Core.Studies;

/// <summary>The result of one case, computed on a worker thread, before it enters the tally.</summary>
internal readonly record struct CaseRow(long Index, double[] Inputs, string Outcome, double?[] Measures, string? Refusal);
