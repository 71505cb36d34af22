using System.Collections.Immutable;

namespace Staging.Core.Gaps;

/// <summary>Rules of a motor that is known by its grain.</summary>
internal static class EndBurnerChecks
{
    /// <summary>Highest chamber pressure that the model takes [Pa]: as for a motor whose pressure is stated.</summary>
    private const double MaxPressure = 2e7;

    /// <summary>Thickness of the web over its radius beyond which it is no plate any more [-].</summary>
    private const double ThickPlate = 0.5;

    /// <summary>Whether the balance gives a pressure at which a web can break.</summary>
    public static ImmutableArray<ModelFinding> OfPressure(GapSource.EndBurner motor, double outside, string path)
    {
        double pressure = BurnThroughEstimate.PressureOf(motor, outside);
        if (pressure <= (1 + GapSystem.SpentShare) * outside)
            return [Finding(FindingSeverity.Error, "GAP005", path, Invariant.Text(
                $"The chamber pressure {pressure / 1e3:F0} kPa that follows from face, "
                + $"rate and throat hardly exceeds the outside pressure {outside / 1e3:F0} kPa; no web would break."))];
        return pressure <= MaxPressure
            ? []
            : [Finding(FindingSeverity.Error, "GAP032", path, Invariant.Text(
                $"The chamber pressure that follows from face, rate and throat is "
                + $"{pressure / 1e6:F0} MPa, above {MaxPressure / 1e6:F0} MPa; give a wider throat or a slower rate."))];
    }

    /// <summary>
    /// Everything that is to be said of a motor in a gap. Products that make no gas break no web; they have findings of
    /// their own.
    /// </summary>
    public static IEnumerable<ModelFinding> Of(GapSource.EndBurner motor, double outside, string path)
    {
        if (motor.Products.Check().Any(f => f.Severity == FindingSeverity.Error))
            return [];
        ImmutableArray<ModelFinding> ofPressure = OfPressure(motor, outside, path);
        if (ofPressure.Length > 0)
            return ofPressure;
        WebRupture web = new BurnThroughEstimate(motor, outside).Rupture;
        return web.Edge <= ThickPlate * web.Radius
            ? []
            : [Finding(FindingSeverity.Warning, "GAP033", $"{path}.Strength", Invariant.Text(
                $"The web would break {web.Edge * 1e3:F1} mm thick "
                + $"over a radius of {web.Radius * 1e3:F1} mm: no thin plate. Its mass is then a rough guess."))];
    }

    private static ModelFinding Finding(FindingSeverity severity, string code, string path, string message) =>
        new(severity, code, path, message);
}
