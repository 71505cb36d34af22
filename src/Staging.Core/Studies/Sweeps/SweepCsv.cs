namespace Staging.Core.Studies;

/// <summary>The common part of the tables of both kinds of sweep.</summary>
internal static class SweepCsv
{
    public static string Head<TResult>(EquatableArray<Measure<TResult>> measures) =>
        string.Concat(measures.Select(m => "," + Csv.Head(m.Column)));

    public static string Cells<TResult>(EquatableArray<Measure<TResult>> measures, TResult result) =>
        string.Concat(measures.Select(m => "," + Csv.Cell(m.Of(result))));
}
