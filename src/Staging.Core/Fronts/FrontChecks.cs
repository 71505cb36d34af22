using System.Collections.Immutable;
using Staging.Core.Gases;

namespace Staging.Core.Fronts;

/// <summary>Requirements of the closed forms of displacement on their inputs.</summary>
internal static class FrontChecks
{
    /// <summary>
    /// Front speed over speed of sound above which the pressure ahead is no longer that of the air [-]: the usual bound
    /// of incompressible flow. At 0.3 a sudden front already raises the pressure ahead of it by half
    /// (<see cref="NormalShock.PistonPressureRatio"/>).
    /// </summary>
    private const double MaxMach = 0.3;

    public static ImmutableArray<ModelFinding> Speed(GasState air, double speed, string path)
    {
        double mach = speed / air.SoundSpeed.MetersPerSecond;
        if (!(mach > MaxMach))
            return [];
        string text = Invariant.Text($"The front moves at {speed:F0} m/s, {mach:F2} of the speed of sound in the air ahead; the "
            + $"pressure there is that of undisturbed air only up to {MaxMach:F1}. The shock tube is the other limit.");
        return [new ModelFinding(FindingSeverity.Warning, "FRO001", path, text)];
    }
}
