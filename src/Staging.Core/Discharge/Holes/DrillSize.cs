using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>One drill of a series with regular steps. Common trade sizes, no source.</summary>
public sealed class DrillSize
{
    // Two diameters that differ by less than a nanometre are the same drill.
    private const double Same = 1e-9;

    private static readonly ImmutableArray<DrillSize> Tenths = [.. Enumerable.Range(5, 126).Select(n => Metric(n / 10.0))];
    private static readonly ImmutableArray<DrillSize> Halves = [.. Enumerable.Range(2, 49).Select(n => Metric(n / 2.0))];
    private static readonly ImmutableArray<DrillSize> Fractions = [.. Enumerable.Range(1, 64).Select(Inch)];

    private DrillSize(string label, Length diameter) => (Label, Diameter) = (label, diameter);

    /// <summary>Its size as stamped on it, for example <c>3.2 mm</c> or <c>7/64 in</c>.</summary>
    public string Label { get; }

    /// <summary>Its diameter.</summary>
    public Length Diameter { get; }

    /// <summary>Every drill of a series, from the smallest.</summary>
    /// <param name="series">The series.</param>
    /// <returns>The drills.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not one of the defined series.</exception>
    public static ImmutableArray<DrillSize> All(DrillSeries series) => Guard.Defined(series, nameof(series)) switch
    {
        DrillSeries.MetricTenths => Tenths,
        DrillSeries.MetricHalves => Halves,
        _ => Fractions,
    };

    /// <summary>
    /// The drill of a diameter, of the series at hand where that has it, else metric where a metric one has it; null
    /// where no series has one.
    /// </summary>
    internal static DrillSize? Of(Length diameter, DrillSeries? atHand) =>
        (atHand is { } series ? All(series) : []).Concat(Halves).Concat(Tenths).Concat(Fractions)
            .FirstOrDefault(s => Math.Abs(s.Diameter.Meters - diameter.Meters) < Same);

    /// <summary>The largest drill that is not larger than a diameter.</summary>
    /// <param name="series">The series.</param>
    /// <param name="diameter">Wanted diameter [m], 0 to 1 m.</param>
    /// <returns>The drill, or null when every drill is larger.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static DrillSize? Below(DrillSeries series, Length diameter)
    {
        double d = Wanted(diameter);
        return All(series).LastOrDefault(s => s.Diameter.Meters <= d + Same);
    }

    /// <summary>The smallest drill that is not smaller than a diameter.</summary>
    /// <param name="series">The series.</param>
    /// <param name="diameter">Wanted diameter [m], 0 to 1 m.</param>
    /// <returns>The drill, or null when every drill is smaller.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static DrillSize? Above(DrillSeries series, Length diameter)
    {
        double d = Wanted(diameter);
        return All(series).FirstOrDefault(s => s.Diameter.Meters >= d - Same);
    }

    /// <inheritdoc cref="Label"/>
    /// <returns>The label.</returns>
    public override string ToString() => Label;

    private static double Wanted(Length diameter) => Guard.In(diameter, 0, 1, nameof(diameter)).Meters;

    private static DrillSize Metric(double mm) =>
        new(mm.ToString("0.0", CultureInfo.InvariantCulture) + " mm", Length.FromMillimeters(mm));

    private static DrillSize Inch(int sixtyFourths)
    {
        int shared = sixtyFourths & -sixtyFourths;
        int denominator = 64 / shared;
        int numerator = sixtyFourths / shared;
        string label = denominator == 1
            ? Invariant.Text($"{numerator} in")
            : Invariant.Text($"{numerator}/{denominator} in");
        return new DrillSize(label, Length.FromMillimeters(25.4 * sixtyFourths / 64));
    }
}
