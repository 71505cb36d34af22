namespace Staging.Core.Native;

/// <summary>One column of a table: numbers, and which of them are there.</summary>
internal sealed class TableColumn
{
    private readonly double[] values;
    private readonly bool[] present;

    /// <summary>Makes a column; what is not a finite number counts as absent, so that none crosses.</summary>
    public TableColumn(string name, string unit, ReadOnlyMemory<double> values, ReadOnlyMemory<bool>? present = null)
    {
        (Name, Unit) = (name, unit);
        this.values = values.ToArray();
        this.present = present?.ToArray() ?? [.. Enumerable.Repeat(true, values.Length)];
        for (int i = 0; i < this.values.Length; i++)
        {
            this.present[i] &= double.IsFinite(this.values[i]);
            this.values[i] = this.present[i] ? this.values[i] : 0;
        }

        IsComplete = this.present.All(there => there);
    }

    public string Name { get; }

    public string Unit { get; }

    /// <summary>Whether every number is there.</summary>
    public bool IsComplete { get; }

    /// <summary>Copies the numbers, 0 where one is absent, and whether each is there.</summary>
    public void CopyTo(Span<double> numbers, Span<byte> there)
    {
        values.CopyTo(numbers);
        for (int i = 0; i < there.Length; i++)
            there[i] = present[i] ? (byte)1 : (byte)0;
    }
}
