using Staging.Core.Solving;

namespace Staging.Core.Validation.Twin;

/// <summary>
/// A second integrator that shares nothing with ours: the modified midpoint rule extrapolated to zero step in h^2 (W. B. Gragg 1965; R. Bulirsch
/// and J. Stoer 1966), on equal intervals, to round-off.
/// </summary>
internal static class SolvingExtrapolation
{
    private const int Columns = 8;

    /// <summary>Integrates from the state given, which is replaced, over equal intervals.</summary>
    public static void Run<TSystem>(ref TSystem system, double start, double stop, int intervals, double[] y)
        where TSystem : IOdeSystem
    {
        double length = (stop - start) / intervals;
        for (int i = 0; i < intervals; i++)
            Interval(ref system, start + i * length, length, y);
    }

    private static void Interval<TSystem>(ref TSystem system, double t, double length, double[] y)
        where TSystem : IOdeSystem
    {
        var row = new double[Columns][];
        for (int k = 0; k < Columns; k++)
        {
            double[] entry = Midpoint(ref system, t, length, Steps(k), y);
            for (int j = 1; j <= k; j++)
            {
                // Aitken and Neville in the squares of the steps: the row above gives way to this one.
                double ratio = (double)Steps(k) / Steps(k - j);
                double[] above = row[j - 1];
                row[j - 1] = entry;
                entry = [.. entry.Zip(above, (e, a) => e + (e - a) / (ratio * ratio - 1))];
            }

            row[k] = entry;
        }

        row[Columns - 1].CopyTo(y, 0);
    }

    private static int Steps(int k) => 2 * (k + 1);

    private static double[] Midpoint<TSystem>(ref TSystem system, double t, double length, int steps, double[] y)
        where TSystem : IOdeSystem
    {
        int n = y.Length;
        double h = length / steps;
        double[] before = [.. y], now = new double[n], slope = new double[n];
        system.Derivative(t, before, slope);
        for (int i = 0; i < n; i++)
            now[i] = before[i] + h * slope[i];
        for (int m = 1; m < steps; m++)
        {
            system.Derivative(t + m * h, now, slope);
            for (int i = 0; i < n; i++)
                (before[i], now[i]) = (now[i], before[i] + 2 * h * slope[i]);
        }

        system.Derivative(t + length, now, slope);
        for (int i = 0; i < n; i++)
            now[i] = 0.5 * (before[i] + now[i] + h * slope[i]);
        return now;
    }
}
