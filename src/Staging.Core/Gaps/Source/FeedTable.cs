namespace Staging.Core.Gaps;

/// <summary>
/// A history of mass flow and temperature: straight lines between points, nothing before the first and after the last.
/// </summary>
public sealed record FeedTable
{
    private readonly double[] time;
    private readonly double[] massFlow;
    private readonly double[] temperature;

    private FeedTable(double[] time, double[] massFlow, double[] temperature) =>
        (this.time, this.massFlow, this.temperature) = (time, massFlow, temperature);

    /// <summary>Times of the points since burn-through [s], strictly rising, 0 to 10 s.</summary>
    public ReadOnlyMemory<double> Time_s => time;

    /// <summary>Mass flow at the points [kg/s], 0 to 10.</summary>
    public ReadOnlyMemory<double> MassFlow_kg_per_s => massFlow;

    /// <summary>Temperature at the points [K], 250 to 3500.</summary>
    public ReadOnlyMemory<double> Temperature_K => temperature;

    /// <summary>Mass that comes in all: the sum of the trapezoids under the mass flow [kg].</summary>
    public UnitsNet.Mass TotalMass
    {
        get
        {
            double sum = 0;
            for (int i = 1; i < time.Length; i++)
                sum += 0.5 * (massFlow[i - 1] + massFlow[i]) * (time[i] - time[i - 1]);
            return UnitsNet.Mass.FromKilograms(sum);
        }
    }

    /// <summary>Makes a table from three columns.</summary>
    /// <param name="time_s">Times since burn-through [s], strictly rising, 0 to 10 s, 2 to 10000 points.</param>
    /// <param name="massFlow_kg_per_s">As many mass flows [kg/s], 0 to 10.</param>
    /// <param name="temperature_K">As many temperatures [K], 250 to 3500.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">A column breaks one of these rules; the message names the point.</exception>
    public static FeedTable FromColumns(ReadOnlySpan<double> time_s, ReadOnlySpan<double> massFlow_kg_per_s,
        ReadOnlySpan<double> temperature_K)
    {
        int n = time_s.Length;
        if (n is < 2 or > 10_000)
            throw new ArgumentException($"There are {n} points; there must be between 2 and 10000.", nameof(time_s));
        Check(massFlow_kg_per_s, n, 0, 10, "kg/s", nameof(massFlow_kg_per_s));
        Check(temperature_K, n, 250, 3500, "K", nameof(temperature_K));
        Check(time_s, n, 0, 10, "s", nameof(time_s));
        for (int i = 1; i < n; i++)
        {
            if (!(time_s[i] > time_s[i - 1]))
                throw new ArgumentException(Invariant.Text($"Point {i + 1}: {time_s[i]:G6} s does not come after {time_s[i - 1]:G6} s."),
                    nameof(time_s));
        }

        return new FeedTable(time_s.ToArray(), massFlow_kg_per_s.ToArray(), temperature_K.ToArray());
    }

    internal FeedParameters ToSi() => new(time, massFlow, temperature);

    private static void Check(ReadOnlySpan<double> column, int count, double low, double high, string unit, string name)
    {
        if (column.Length != count)
            throw new ArgumentException($"There are {count} times and {column.Length} values; the columns must be equally long.", name);
        for (int i = 0; i < count; i++)
        {
            if (!(column[i] >= low && column[i] <= high))
                throw new ArgumentException(
                    Invariant.Text($"Point {i + 1} is {column[i]:G6} {unit}; it must be between {low:G6} and {high:G6} {unit}."), name);
        }
    }
}
