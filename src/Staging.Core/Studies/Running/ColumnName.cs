namespace Staging.Core.Studies;

/// <summary>Name and unit of a column.</summary>
public sealed class ColumnName
{
    internal ColumnName(string name, string unit) => (Name, Unit) = (name, unit);

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>Unit; <c>-</c> where there is none.</summary>
    public string Unit { get; }

    /// <summary>Name and unit as the head of a column.</summary>
    /// <returns>For example <c>joint.breakaway [N]</c>.</returns>
    public override string ToString() => $"{Name} [{Unit}]";

    /// <summary>Whether two rows of columns have the same names and units in the same order.</summary>
    internal static bool Same(IEnumerable<ColumnName> one, IEnumerable<ColumnName> other) =>
        one.Select(c => (c.Name, c.Unit)).SequenceEqual(other.Select(c => (c.Name, c.Unit)));
}
