namespace Staging.Core.Studies;

/// <summary>Cases kept one by one, in the order of their numbers.</summary>
internal sealed class CaseStore
{
    public List<CaseRow> Rows { get; } = [];

    public void Add(CaseRow row) => Rows.Add(row);

    /// <summary>Adds the cases of another part; parts that were merged before may interleave.</summary>
    public void Add(CaseStore other)
    {
        bool follows = Rows.Count == 0 || other.Rows.Count == 0 || Rows[^1].Index < other.Rows[0].Index;
        Rows.AddRange(other.Rows);
        if (!follows)
            Rows.Sort((a, b) => a.Index.CompareTo(b.Index));
    }
}
