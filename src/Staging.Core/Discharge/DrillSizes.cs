using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>Drill series by rule, and the drills next to a wanted diameter. Common trade sizes, no source.</summary>
public static class DrillSizes
{
    // Two diameters that differ by less than a nanometre are the same drill.
    private const double Same = 1e-9;

    private static readonly ImmutableArray<DrillSize> Tenths = [.. Enumerable.Range(5, 126).Select(n => Metric(n / 10.0))];
    private static readonly ImmutableArray<DrillSize> Halves = [.. Enumerable.Range(2, 49).Select(n => Metric(n / 2.0))];
    private static readonly ImmutableArray<DrillSize> Fractions = [.. Enumerable.Range(1, 64).Select(Inch)];

    /// <summary>Every drill of a series, from the smallest.</summary>
    /// <param name="series">The series.</param>
    /// <returns>The drills.</returns>
    public static ImmutableArray<DrillSize> All(DrillSeries series) => series switch
    {
        DrillSeries.MetricTenths => Tenths,
        DrillSeries.MetricHalves => Halves,
        DrillSeries.InchFractions => Fractions,
        _ => throw new ArgumentOutOfRangeException(nameof(series), series, "The series is none of the known ones."),
    };

    /// <summary>The largest drill that is not larger than a diameter.</summary>
    /// <param name="series">The series.</param>
    /// <param name="diameter">Wanted diameter.</param>
    /// <returns>The drill, or null when every drill is larger.</returns>
    public static DrillSize? Below(DrillSeries series, Length diameter) =>
        All(series).LastOrDefault(s => s.Diameter.Meters <= diameter.Meters + Same);

    /// <summary>The smallest drill that is not smaller than a diameter.</summary>
    /// <param name="series">The series.</param>
    /// <param name="diameter">Wanted diameter.</param>
    /// <returns>The drill, or null when every drill is smaller.</returns>
    public static DrillSize? Above(DrillSeries series, Length diameter) =>
        All(series).FirstOrDefault(s => s.Diameter.Meters >= diameter.Meters - Same);

    private static DrillSize Metric(double mm) =>
        new(mm.ToString("0.0", CultureInfo.InvariantCulture) + " mm", Length.FromMillimeters(mm));

    private static DrillSize Inch(int sixtyFourths)
    {
        int shared = sixtyFourths & -sixtyFourths;
        int denominator = 64 / shared;
        int numerator = sixtyFourths / shared;
        string label = denominator == 1
            ? string.Create(CultureInfo.InvariantCulture, $"{numerator} in")
            : string.Create(CultureInfo.InvariantCulture, $"{numerator}/{denominator} in");
        return new DrillSize(label, Length.FromMillimeters(25.4 * sixtyFourths / 64));
    }
}
