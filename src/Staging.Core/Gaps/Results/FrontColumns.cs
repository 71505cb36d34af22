using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>The travel of a front as columns of equal length, in SI units, for plots and notebooks.</summary>
public sealed record FrontColumns
{
    /// <summary>
    /// Longest step of the running heat loss [s]: a hundredth of the shortest time in which a front crosses a gap.
    /// </summary>
    internal const double Fine_s = 20e-6;

    /// <summary>Time since burn-through [s].</summary>
    public required ReadOnlyMemory<double> Time_s { get; init; }

    /// <summary>Station of the front [m].</summary>
    public required ReadOnlyMemory<double> Front_m { get; init; }

    /// <summary>Speed of the front [m/s].</summary>
    public required ReadOnlyMemory<double> Speed_mps { get; init; }

    /// <summary>Thickness of the mixing zone, 90 to 10 % products [m].</summary>
    public required ReadOnlyMemory<double> MixingThickness_m { get; init; }

    /// <summary>Heat given to the tube wall so far [J].</summary>
    public required ReadOnlyMemory<double> HeatLost_J { get; init; }

    internal static FrontColumns Of(GapRun run, FrontTravel travel, double interval, double end)
    {
        int n = (int)Math.Ceiling(end / interval * (1 - 1e-12)) + 1;
        double[] time = new double[n], front = new double[n], speed = new double[n], thickness = new double[n], heat = new double[n];
        double lost = 0, before = LossRate(run, 0);
        for (int i = 0; i < n; i++)
        {
            double t = Math.Min(i * interval, end);
            if (i > 0)
            {
                int parts = (int)Math.Ceiling((t - time[i - 1]) / Fine_s * (1 - 1e-12));
                for (int k = 1; k <= parts; k++)
                {
                    double after = LossRate(run, time[i - 1] + (t - time[i - 1]) * k / parts);
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

        return new FrontColumns { Time_s = time, Front_m = front, Speed_mps = speed, MixingThickness_m = thickness, HeatLost_J = heat };
    }

    /// <summary>h times the wall behind the front times (T - Tw) [W].</summary>
    private static double LossRate(GapRun run, double t)
    {
        GapSnapshot s = run.At(Duration.FromSeconds(t));
        double h = run.Problem.Design.MixingAndHeat.WallHeatTransfer.WattsPerSquareMeterKelvin;
        BoreProfile profile = run.Problem.Design.Tube.Profile;
        double stretch = FrontTravel.Stretch(run, s);
        return h * (profile.WallTo(s.Front.Meters - stretch) + Math.PI * profile.FirstBore * stretch) * (s.HotTemperature.Kelvins
            - run.Problem.Surroundings.Temperature.Kelvins);
    }
}
