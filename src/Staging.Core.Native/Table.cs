using System.Collections.Immutable;
using System.Text.Json;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Studies;

namespace Staging.Core.Native;

/// <summary>Columns of equal length, each with a name and a unit.</summary>
internal sealed class Table(int rows, ImmutableArray<TableColumn> columns)
{
    public int Rows => rows;

    public ImmutableArray<TableColumn> Columns => columns;

    /// <summary>The course of a gap.</summary>
    public static Table Of(GapColumns gap) => new(gap.Time_s.Length,
        [Time(gap.Time_s), .. Enum.GetValues<GapChannel>().Select(c => new TableColumn(Word(c), GapColumns.UnitOf(c), gap[c]))]);

    /// <summary>The flight of a body.</summary>
    public static Table Of(FlightColumns body) => new(body.Time_s.Length,
        [Time(body.Time_s), .. Enum.GetValues<FlightChannel>().Select(c => new TableColumn(Word(c), FlightColumns.UnitOf(c), body[c]))]);

    /// <summary>The cases of a study: inputs first, then measures.</summary>
    public static Table Of(CaseColumns cases) => new(cases.Index.Length,
        [.. cases.Inputs.Concat(cases.Measures).Select(c => new TableColumn(c.Name.Name, c.Name.Unit, c.Values, c.Present))]);

    private static TableColumn Time(ReadOnlyMemory<double> time_s) => new("time", "s", time_s);

    private static string Word(Enum channel) => JsonNamingPolicy.CamelCase.ConvertName(channel.ToString());
}
