namespace Staging.Core.Flight;

/// <summary>One row of the columns, in SI units.</summary>
internal readonly record struct FlightRow(
    double Time, double Height, double Velocity, double Acceleration, double Mass, double Thrust, double Drag, double Mach,
    double DynamicPressure);

/// <summary>Gathers rows and turns them into columns.</summary>
internal sealed class FlightRows
{
    private readonly List<FlightRow> rows = [];

    public void Add(FlightRow row) => rows.Add(row);

    public FlightColumns ToColumns() => new(
        Column(r => r.Time),
        Column(r => r.Height),
        Column(r => r.Velocity),
        Column(r => r.Acceleration),
        Column(r => r.Mass),
        Column(r => r.Thrust),
        Column(r => r.Drag),
        Column(r => r.Mach),
        Column(r => r.DynamicPressure));

    private double[] Column(Func<FlightRow, double> value)
    {
        double[] column = new double[rows.Count];
        for (int i = 0; i < column.Length; i++)
            column[i] = value(rows[i]);
        return column;
    }
}
