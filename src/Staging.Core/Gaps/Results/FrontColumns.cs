using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>The travel of a front as columns of equal length, in SI units, for plots and notebooks.</summary>
/// <remarks>Immutable; may be read from any thread. Made by <see cref="FrontTravel.Sample"/>.</remarks>
public sealed class FrontColumns
{
    /// <summary>
    /// Longest step of the running heat loss [s]: a hundredth of the shortest time in which a front crosses a gap.
    /// </summary>
    internal const double Fine_s = 20e-6;

    internal FrontColumns(FrontTravel travel, double interval, double end)
    {
        int n = (int)Math.Ceiling(end / interval * (1 - 1e-12)) + 1;
        double[] time = new double[n], front = new double[n], speed = new double[n], thickness = new double[n], heat = new double[n];
        double lost = 0, before = travel.LossRate(0);
        for (int i = 0; i < n; i++)
        {
            double t = Math.Min(i * interval, end);
            if (i > 0)
            {
                int parts = (int)Math.Ceiling((t - time[i - 1]) / Fine_s * (1 - 1e-12));
                for (int k = 1; k <= parts; k++)
                {
                    double after = travel.LossRate(time[i - 1] + (t - time[i - 1]) * k / parts);
                    lost += 0.5 * (before + after) * (t - time[i - 1]) / parts;
                    before = after;
                }
            }

            Duration at = Duration.FromSeconds(t);
            time[i] = t;
            front[i] = travel.Front(t);
            speed[i] = travel.SpeedAt(at).MetersPerSecond;
            thickness[i] = travel.MixingThicknessAt(at).Meters;
            heat[i] = lost;
        }

        (Time_s, Front_m, Speed_mps, MixingThickness_m, HeatLost_J) = (time, front, speed, thickness, heat);
    }

    /// <summary>Time since burn-through [s].</summary>
    public ReadOnlyMemory<double> Time_s { get; }

    /// <summary>Station of the front [m].</summary>
    public ReadOnlyMemory<double> Front_m { get; }

    /// <summary>Speed of the front [m/s].</summary>
    public ReadOnlyMemory<double> Speed_mps { get; }

    /// <summary>Thickness of the mixing zone, 90 to 10 % products [m].</summary>
    public ReadOnlyMemory<double> MixingThickness_m { get; }

    /// <summary>Heat given to the tube wall so far [J].</summary>
    public ReadOnlyMemory<double> HeatLost_J { get; }

    /// <summary>How many moments there are, and up to when.</summary>
    /// <returns>One line.</returns>
    public override string ToString() =>
        Invariant.Text($"The travel of a front at {Time_s.Length} moments up to {Time_s.Span[^1] * 1e3:G4} ms.");
}
