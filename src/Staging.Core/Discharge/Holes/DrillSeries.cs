namespace Staging.Core.Discharge;

/// <summary>The series of drills available.</summary>
public enum DrillSeries
{
    /// <summary>Metric, 0.5 mm to 13.0 mm in steps of 0.1 mm: a full shop set.</summary>
    MetricTenths,

    /// <summary>Metric, 1.0 mm to 25.0 mm in steps of 0.5 mm: an ordinary household set and beyond.</summary>
    MetricHalves,

    /// <summary>Inch, 1/64 in to 1 in in steps of 1/64 in.</summary>
    InchFractions,
}
