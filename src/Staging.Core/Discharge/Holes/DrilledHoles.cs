namespace Staging.Core.Discharge;

/// <summary>A set of equal holes made with a standard drill.</summary>
public sealed class DrilledHoles
{
    internal DrilledHoles(DrillSize drill, VentHoles holes, double areaError) => (Drill, Holes, AreaError) = (drill, holes, areaError);

    /// <summary>The drill.</summary>
    public DrillSize Drill { get; }

    /// <summary>The holes.</summary>
    public VentHoles Holes { get; }

    /// <summary>Total area over the wanted area, less one [-]: -0.1 is a tenth too little.</summary>
    public double AreaError { get; }

    /// <summary>The drill and its area error.</summary>
    /// <returns>For example <c>2.9 mm (-2.0 %)</c>.</returns>
    public override string ToString() => Invariant.Text($"{Drill} ({100 * AreaError:+0.0;-0.0} %)");
}
