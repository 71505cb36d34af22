using Apache.Arrow;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Studies;

namespace Staging.Core.Arrow;

/// <summary>Columns of runs and studies as record batches of Apache Arrow.</summary>
/// <remarks>
/// Numbers keep their bits. The metadata of each field has the unit under <c>unit</c>, <c>-</c> for a share; an absent
/// number is null.
/// </remarks>
public static class ArrowColumns
{
    /// <summary>The course of a gap run: <c>Time</c> [s] and every <see cref="GapChannel"/> by its name.</summary>
    /// <param name="columns">The columns.</param>
    /// <returns>A row for each moment.</returns>
    public static RecordBatch ToArrow(this GapColumns columns)
    {
        ArgumentNullException.ThrowIfNull(columns);
        return new Batch()
            .Add("Time", "s", columns.Time_s.Span)
            .AddAll(Enum.GetValues<GapChannel>(), (batch, c) => batch.Add(c.ToString(), GapColumns.UnitOf(c), columns[c].Span))
            .Done();
    }

    /// <summary>The course of a flight: <c>Time</c> [s] and every <see cref="FlightChannel"/> by its name.</summary>
    /// <param name="columns">The columns.</param>
    /// <returns>A row for each moment; a jump has two rows at the same time.</returns>
    public static RecordBatch ToArrow(this FlightColumns columns)
    {
        ArgumentNullException.ThrowIfNull(columns);
        return new Batch()
            .Add("Time", "s", columns.Time_s.Span)
            .AddAll(Enum.GetValues<FlightChannel>(), (batch, c) => batch.Add(c.ToString(), FlightColumns.UnitOf(c), columns[c].Span))
            .Done();
    }

    /// <summary>
    /// The cases of a study: <c>case</c>, <c>outcome</c>, every input and every measure by its name.
    /// </summary>
    /// <param name="columns">The columns.</param>
    /// <returns>A row for each case.</returns>
    /// <exception cref="ArgumentException">Two columns have one name.</exception>
    public static RecordBatch ToArrow(this CaseColumns columns)
    {
        ArgumentNullException.ThrowIfNull(columns);
        return new Batch()
            .Add("case", columns.Index.Span)
            .Add("outcome", columns.Outcome)
            .AddAll([.. columns.Inputs, .. columns.Measures], (batch, column) => batch.Add(column))
            .Done();
    }

    /// <summary>A sweep along one axis: the axis and measures of the results.</summary>
    /// <typeparam name="TResult">The result of each point.</typeparam>
    /// <param name="line">The sweep.</param>
    /// <param name="measures">The numbers to read from each result.</param>
    /// <returns>A row for each value of the axis.</returns>
    /// <exception cref="ArgumentException">Two columns have one name.</exception>
    public static RecordBatch ToArrow<TResult>(this SweepLine<TResult> line, params EquatableArray<Measure<TResult>> measures)
    {
        ArgumentNullException.ThrowIfNull(line);
        return new Batch().Add(line.Axis.Name, line.Axis.Values.Items).AddAll(measures, (batch, m) => batch.Add(m, line.Results)).Done();
    }

    /// <summary>A sweep over two axes: both axes and measures of the results.</summary>
    /// <typeparam name="TResult">The result of each point.</typeparam>
    /// <param name="map">The sweep.</param>
    /// <param name="measures">The numbers to read from each result.</param>
    /// <returns>A row for each point, the first axis changing fastest.</returns>
    /// <exception cref="ArgumentException">Two columns have one name.</exception>
    public static RecordBatch ToArrow<TResult>(this SweepMap<TResult> map, params EquatableArray<Measure<TResult>> measures)
    {
        ArgumentNullException.ThrowIfNull(map);
        int across = map.Across.Values.Length;
        return new Batch()
            .Add(map.Across.Name, [.. map.Results.Select((_, i) => map.Across.Values[i % across])])
            .Add(map.Up.Name, [.. map.Results.Select((_, i) => map.Up.Values[i / across])])
            .AddAll(measures, (batch, m) => batch.Add(m, map.Results))
            .Done();
    }

    /// <summary>What is believed after observations: every input by its name, and <c>weight</c> [-].</summary>
    /// <typeparam name="T">The model.</typeparam>
    /// <param name="posterior">What was learned.</param>
    /// <returns>A row for each case; those without weight have none.</returns>
    /// <exception cref="ArgumentException">Two columns have one name.</exception>
    public static RecordBatch ToArrow<T>(this Posterior<T> posterior)
    {
        ArgumentNullException.ThrowIfNull(posterior);
        return new Batch()
            .AddAll(posterior.Inputs, (batch, input) => batch.Add(input.Input, [.. posterior.Values(input.Input.Name).Span]))
            .Add("weight", "-", posterior.Weights.Span)
            .Done();
    }
}
