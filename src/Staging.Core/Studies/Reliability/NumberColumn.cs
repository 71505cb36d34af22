namespace Staging.Core.Studies;

/// <summary>A column of numbers, some of which may be absent.</summary>
public sealed class NumberColumn
{
    internal NumberColumn(ColumnName name, IEnumerable<double?> values)
    {
        double?[] all = [.. values];
        Name = name;
        Values = all.Select(v => v ?? 0).ToArray();
        Present = all.Select(v => v.HasValue).ToArray();
    }

    /// <summary>Name and unit.</summary>
    public ColumnName Name { get; }

    /// <summary>The numbers [Unit]; 0 where <see cref="Present"/> says that there is none.</summary>
    public ReadOnlyMemory<double> Values { get; }

    /// <summary>Whether there is a number.</summary>
    public ReadOnlyMemory<bool> Present { get; }

    /// <summary>Name, unit and how many numbers there are.</summary>
    /// <returns>For example <c>lit time [ms]: 812 of 1000</c>.</returns>
    public override string ToString() => Invariant.Text($"{Name}: {Present.ToArray().Count(p => p)} of {Present.Length}");

    /// <summary>One number.</summary>
    /// <param name="row">Which row, from 0.</param>
    /// <returns>The number [Unit]; null where there is none.</returns>
    public double? At(int row) => Present.Span[row] ? Values.Span[row] : null;
}
