using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>What the tables of both kinds of sweep have in common.</summary>
internal static class SweepCsv
{
    public static string Head<TResult>(ImmutableArray<Measure<TResult>> measures) =>
        string.Concat(measures.Select(m => "," + Csv.Head(new ColumnName(m.Name, m.Unit))));

    public static string Cells<TResult>(ImmutableArray<Measure<TResult>> measures, TResult result) =>
        string.Concat(measures.Select(m => "," + Csv.Cell(m.Of(result))));
}
