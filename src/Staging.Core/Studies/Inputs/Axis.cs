namespace Staging.Core.Studies;

/// <summary>Values along which one input is swept or searched.</summary>
public sealed record Axis
{
    private Axis(ColumnName name, double low, double high, EquatableArray<double> values, bool byFactors) =>
        (Name, Low, High, Values, ByFactors) = (name, low, high, values, byFactors);

    /// <summary>Name and unit.</summary>
    public ColumnName Name { get; }

    /// <summary>Lowest value [Unit].</summary>
    public double Low { get; }

    /// <summary>Highest value [Unit].</summary>
    public double High { get; }

    /// <summary>The values, rising [Unit]; both ends are among them.</summary>
    public EquatableArray<double> Values { get; }

    /// <summary>Whether neighbours differ by an equal factor, not by an equal step.</summary>
    public bool ByFactors { get; }

    /// <summary>Values at equal steps.</summary>
    /// <param name="name">What is varied.</param>
    /// <param name="unit">Its unit; <c>-</c> where there is none.</param>
    /// <param name="low">Lowest value [unit].</param>
    /// <param name="high">Highest value [unit], above the lowest.</param>
    /// <param name="count">Number of values, 2 to 100 000.</param>
    /// <returns>The axis.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Axis Even(string name, string unit, double low, double high, int count)
    {
        Check(low, -1e300, high, count);
        return new Axis(Named(name, unit), low, high, Fill(low, high, count, f => low + (high - low) * f), byFactors: false);
    }

    /// <summary>Values at equal factors, for quantities whose ratio matters.</summary>
    /// <param name="name">What is varied.</param>
    /// <param name="unit">Its unit; <c>-</c> where there is none.</param>
    /// <param name="low">Lowest value [unit], above 0.</param>
    /// <param name="high">Highest value [unit], above the lowest.</param>
    /// <param name="count">Number of values, 2 to 100 000.</param>
    /// <returns>The axis.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Axis Factors(string name, string unit, double low, double high, int count)
    {
        Check(low, double.Epsilon, high, count);
        return new Axis(Named(name, unit), low, high,
            Fill(low, high, count, f => Math.Exp(Math.Log(low) + (Math.Log(high) - Math.Log(low)) * f)), byFactors: true);
    }

    /// <summary>Everything that identifies this axis, on one line.</summary>
    /// <returns>For example <c>gap [mm] from 40 to 340 in 4 values by steps</c>.</returns>
    public override string ToString() => Invariant.Text($"{Name.Name} [{LineWord.Of(Name.Unit)}] from {Low:R} to {High:R} in "
        + $"{Values.Length} values by {(ByFactors ? "factors" : "steps")}");

    /// <summary>The middle of two values: of their logarithms on an axis of factors.</summary>
    internal double Middle(double a, double b) => ByFactors ? Math.Sqrt(a) * Math.Sqrt(b) : a + (b - a) / 2;

    private static ColumnName Named(string name, string unit) => new(InputPath.Checked(name), Guard.NotBlank(unit, nameof(unit)));

    private static void Check(double low, double min, double high, int count)
    {
        Guard.In(low, min, 1e300, "-", nameof(low));
        Guard.Above(high, low, 1e300, "-", nameof(high));
        Guard.In(count, 2, 100_000, nameof(count));
    }

    /// <summary>The ends come as given, without rounding.</summary>
    private static EquatableArray<double> Fill(double low, double high, int count, Func<double, double> at) =>
        [low, .. Enumerable.Range(1, count - 2).Select(i => at((double)i / (count - 1))), high];
}
