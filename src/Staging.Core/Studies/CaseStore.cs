namespace Staging.Core.Studies;

/// <summary>Cases kept one by one, in the order of their numbers.</summary>
internal sealed class CaseStore
{
    public List<CaseRow> Rows { get; } = [];

    public void Add(CaseRow row) => Rows.Add(row);

    public void Add(CaseStore other) => Rows.AddRange(other.Rows);
}
