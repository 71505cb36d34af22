using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;

namespace Staging.Core.Benchmarks;

/// <summary>The shock tube of G. Sod (1978) in 1000 cells to t = 0.2 at Courant number 0.8.</summary>
internal sealed class ShockTubeRun(int lanes, bool twoGases)
{
    private static readonly GasConstants Air = new(287.05287, 1.4);
    private static readonly GasConstants Products = new(240, 1.25);
    private readonly TubeFlow tube =
        new(1000, 1e-3, twoGases ? Products : Air, Air, lanes: lanes) { Left = new OpenEnd(), Right = new OpenEnd() };

    /// <summary>Cells advanced so far, over all runs.</summary>
    public long CellSteps => tube.CellSteps;

    public double Run()
    {
        const double End = 0.2;
        Fill(tube);
        double t = 0;
        while (t < End)
        {
            double dt = tube.LongestStep(0.8);
            if (t + dt >= End)
            {
                tube.Step(End - t);
                break;
            }

            t += tube.Step(dt);
        }

        return tube.Extremes.Fastest;
    }

    /// <summary>Fills a tube with Sod's states.</summary>
    public static void Fill(TubeFlow tube)
    {
        int n = tube.Cells.Count;
        for (int i = 0; i < n; i++)
        {
            bool left = 2 * i + 1 < n;
            tube.Fill(i, left ? 1 : 0.125, 0, left ? 1 : 0.1, left ? 1 : 0);
        }

        tube.Look();
    }
}
