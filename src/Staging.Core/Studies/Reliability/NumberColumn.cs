namespace Staging.Core.Studies;

/// <summary>A column of numbers, some of which may be absent.</summary>
public sealed record NumberColumn
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

    /// <summary>One number.</summary>
    /// <param name="row">Which row, from 0.</param>
    /// <returns>The number [Unit]; null where there is none.</returns>
    public double? At(int row) => Present.Span[row] ? Values.Span[row] : null;
}
