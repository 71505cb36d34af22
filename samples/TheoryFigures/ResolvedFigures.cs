using Samples;
using ScottPlot;
using ScottPlot.Plottables;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;
using UnitsNet;

namespace TheoryFigures;

internal static class ResolvedFigures
{
    public static IEnumerable<(string Name, Plot Plot)> All()
    {
        yield return ("resolved-sod", Sod());
        GapRun run = Run();
        Plot products = Figure.New("Products along a gap of 250 mm", "distance from the booster motor [mm]",
            "mass fraction of products [%]");
        foreach ((int k, double x) in (ReadOnlySpan<(int, double)>)[(0, 25), (2, 57), (3, 107), (4, 164), (5, 205)])
            products.Profile(run.Profiles[k], p => p.Products, 100).Note($"{run.Profiles[k].Time.Milliseconds:F1} ms", x, k == 5 ? 101 : 50,
                Colour(k));
        yield return ("resolved-products", products.Limits(0, 255, 0, 110));
        Plot pressure = Figure.New("Pressure along the same gap", "distance from the booster motor [mm]", "absolute pressure [kPa]");
        foreach ((int k, double x,
            double y) in (ReadOnlySpan<(int, double, double)>)[(0, 62, 120), (1, 2, 129), (2, 2, 106), (5, 215, 141)])
            pressure.Profile(run.Profiles[k], p => p.Pressure_Pa, 1e-3).Note($"{run.Profiles[k].Time.Milliseconds:F1} ms", x, y, Colour(k));
        yield return ("resolved-pressure", pressure.Limits(0, 255, 90, 190));
    }

    private static int Colour(int k) => k < 3 ? k : 3;

    /// <summary>The shock tube of G. Sod (1978) on 100 cells, against the exact solution.</summary>
    private static Plot Sod()
    {
        const int n = 100;
        const double time = 0.2;
        FlowState left = new(1, 0, 1, 1.4), right = new(0.125, 0, 0.1, 1.4);
        var air = new GasConstants(287.05287, 1.4);
        var tube = new TubeFlow(n, 1.0 / n, air, air) { Left = new OpenEnd(), Right = new OpenEnd() };
        for (int i = 0; i < n; i++)
        {
            FlowState s = i < n / 2 ? left : right;
            tube.Fill(i, s.Density, s.Velocity, s.Pressure, i < n / 2 ? 1 : 0);
        }

        tube.Look();
        for (double t = 0; t < time;)
            t += tube.Step(Math.Min(tube.LongestStep(0.8), time - t + 1e-15));
        RiemannSolution exact = RiemannProblem.Solve(left, right);
        double[] x = [.. Enumerable.Range(0, n).Select(i => (i + 0.5) / n)];
        double[] rho = tube.Cells.Density[tube.Cells.First..tube.Cells.End];
        Plot plot = Figure.New("Shock tube of Sod on 100 cells, at time 0.2", "x", "density")
            .Curve(z => exact.Sample((z - 0.5) / time).Density, 0, 1, "", 3);
        Scatter cells = plot.Add.ScatterPoints(x, rho, Curves.Colours[0]);
        cells.MarkerSize = 6;
        cells.MarkerShape = MarkerShape.FilledCircle;
        return plot
            .Note("line: exact, dots: one-dimensional model", 0.02, 0.05, 3)
            .Note("fan", 0.3, 0.9, 3)
            .Note("contact", 0.69, 0.36, 3)
            .Note("shock", 0.86, 0.21, 3)
            .Limits(0, 1, 0, 1.1);
    }

    private static GapRun Run()
    {
        GapProblem start = StartingGaps.Bore18mm;
        GuideTube tube = start.Design.Tube with { Length = Length.FromMillimeters(250) };
        var holes = new VentHoles { Diameter = Length.FromMillimeters(5), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
        GapProblem gap = start with
        {
            Horizon = Duration.FromMilliseconds(8.5),
            Design = start.Design with
            {
                Tube = tube,
                Source = StatedPulse.Booster,
                Vents = [Vent.BelowNozzle(tube, holes, Length.FromMillimeters(1))],
                Joint = start.Design.Joint.Coupler with { BreakawayForce = Force.FromNewtons(40), SlidingForce = Force.FromNewtons(32) },
            },
        };
        return gap.Solve(new GapModel.OneDimensional
        {
            ProfileTimes = [.. new[] { 0.6, 1.0, 1.4, 3, 5, 8 }.Select(t => Duration.FromMilliseconds(t))],
        });
    }

    private static Plot Profile(this Plot plot, GapProfile profile, Func<GapProfile, ReadOnlyMemory<double>> column, double scale)
    {
        double[] x = [.. profile.Station_m.ToArray().Select(v => 1e3 * v)], y = [.. column(profile).ToArray().Select(v => scale * v)];
        Scatter line = plot.Add.ScatterLine(x, y,
            Curves.Colours[profile.Time.Milliseconds switch { < 0.8 => 0, < 1.2 => 1, < 2 => 2, _ => 3 }]);
        line.LineWidth = 3;
        return plot;
    }
}
