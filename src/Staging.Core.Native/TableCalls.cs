using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Staging.Core.Native;

/// <summary>Columns, copied into memory of the caller.</summary>
internal static unsafe class TableCalls
{
    [UnmanagedCallersOnly(EntryPoint = "staging_table_size", CallConvs = [typeof(CallConvCdecl)])]
    public static int Size(nint table, int* rows, int* columns, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(rows, nameof(rows));
        Out.Clear(columns, nameof(columns));
        Table asked = Handles.Get<Table>(table, nameof(table));
        (*rows, *columns) = (asked.Rows, asked.Columns.Length);
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_table_heading", CallConvs = [typeof(CallConvCdecl)])]
    public static int Heading(nint table, int column, byte** name, byte** unit, byte** error) => Border.Cross(error, () =>
    {
        Out.Clear(name, nameof(name));
        Out.Clear(unit, nameof(unit));
        TableColumn asked = Column(table, column);
        *name = NativeText.Give(asked.Name);
        *unit = NativeText.Give(asked.Unit);
    });

    [UnmanagedCallersOnly(EntryPoint = "staging_table_column", CallConvs = [typeof(CallConvCdecl)])]
    public static int Copy(nint table, int column, int capacity, double* values, byte* present, byte** error) => Border.Cross(error, () =>
    {
        TableColumn asked = Column(table, column);
        int rows = Handles.Get<Table>(table, nameof(table)).Rows;
        if (values is null && rows > 0)
            throw new ArgumentException("values is NULL: there is no place for the numbers.");
        if (capacity < rows)
            throw new ArgumentException(FormattableString.Invariant($"capacity is {capacity}; the column has {rows} rows."));
        if (present is null && !asked.IsComplete)
            throw new ArgumentException($"present is NULL, but \"{asked.Name}\" lacks a number in some rows.");
        asked.CopyTo(new Span<double>(values, rows), new Span<byte>(present, present is null ? 0 : rows));
    });

    private static TableColumn Column(nint table, int column)
    {
        Table asked = Handles.Get<Table>(table, nameof(table));
        return column >= 0 && column < asked.Columns.Length
            ? asked.Columns[column]
            : throw new ArgumentOutOfRangeException(null, FormattableString.Invariant(
                $"column is {column}; the table has {asked.Columns.Length} columns, counted from 0."));
    }
}
