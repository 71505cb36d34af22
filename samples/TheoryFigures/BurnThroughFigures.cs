using GapRows;
using Samples;
using ScottPlot;
using ScottPlot.Plottables;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Studies;
using UnitsNet;

namespace TheoryFigures;

/// <summary>
/// A gap of 250 mm with one 6 mm hole, the customary one, in space and time and over what is unknown; and how often
/// such a hole lights, against the length.
/// </summary>
internal static class BurnThroughFigures
{
    private const double Length_mm = 250, End_ms = 30;

    public static IEnumerable<(string Name, Plot Plot)> All()
    {
        yield return ("space-time", SpaceTime());
        yield return ("race-bracket", Race());
    }

    /// <summary>A group of its own: 1280 runs take minutes.</summary>
    public static IEnumerable<(string Name, Plot Plot)> Slow()
    {
        yield return ("odds-length", Odds());
    }

    /// <summary>Pressure along the tube over time, where half of the gas is products, and the flying pieces.</summary>
    private static Plot SpaceTime()
    {
        const double step = 0.05;
        GapProblem gap = Gap();
        GapRun run = gap.Solve(new GapModel.OneDimensional
        {
            Cells = 100,
            ProfileTimes = [.. Enumerable.Range(1, (int)(End_ms / step)).Select(i => Duration.FromMilliseconds(step * i))],
        });
        Plot plot = Figure.New("Pressure along a gap of 250 mm with one 6 mm hole", "time since burn-through [ms]",
            "distance from the booster motor [mm]");
        plot.HideGrid();
        plot.Pressure(run);
        ContourLines half = plot.Add.ContourLines(Products(run));
        (half.ContourLineLevels, half.LineStyle, half.LabelStyle.IsVisible) = ([0.5], new LineStyle(2, Colors.Black), false);
        half.Update(Products(run));
        plot.Note("products", 12.3, 222, Colors.Black);
        plot.Note("mostly air", 13, 120, Colors.Black);

        double speed = ((GapSource.EndBurner)gap.Design.Source).BurnThrough().PieceSpeed.MetersPerSecond;
        plot.Line([(0, 0), (Length_mm / speed, Length_mm)], Figure.Orange).LinePattern = LinePattern.Dashed;
        plot.Note(FormattableString.Invariant($"dashed: pieces, {speed:F0} m/s"), 4.9, 188, Colors.Black);
        plot.Axes.Left.SetTicks([0, 50, 100, 150, 200, 250], ["0", "50", "100", "150", "200", "250"]);
        plot.Happens("pieces at the nozzle", run.TimeOf(GapEventKind.PiecesAtNozzle), 0, Alignment.LowerLeft);
        plot.Happens("their fresh faces lit", ((GapSource.EndBurner)gap.Design.Source).FreshFaceDelay, 0, Alignment.LowerCenter);
        plot.Happens("grain lit", run.TimeOf(GapEventKind.Lit), 1, Alignment.LowerCenter);
        plot.Happens("joint opens", run.TimeOf(GapEventKind.JointOpens), 2, Alignment.LowerRight);
        return plot.Limits(0, End_ms, 0, 325);
    }

    private static void Happens(this Plot plot, string what, Duration? when, int row, Alignment alignment)
    {
        if (when?.Milliseconds is not { } t)
            return;
        double foot = Length_mm + 4 + 22 * row;
        plot.Line([(t, 0), (t, foot)], Figure.Grey).LineWidth = 1.2f;
        plot.Note(FormattableString.Invariant($"{what}, {t:F1} ms"), t, foot, Colors.Black, alignment);
    }

    /// <summary>Gauge pressure as a map, with its scale beside it.</summary>
    private static void Pressure(this Plot plot, GapRun run)
    {
        double outside = run.Problem.Surroundings.Pressure.Pascals, cell = Length_mm / run.Profiles[0].Station_m.Length;
        Heatmap map = plot.Add.Heatmap(Rows(run, p => p.Pressure_Pa, p => (p - outside) / 1e3));
        map.Position = new CoordinateRect(run.Profiles[0].Time.Milliseconds, run.Profiles[^1].Time.Milliseconds, 0.5 * cell,
            Length_mm - 0.5 * cell);
        map.Colormap = new ScottPlot.Colormaps.CustomInterpolated([Colors.White, Figure.Sky, Figure.Blue]);
        map.ManualRange = new(0, 200);
        ScottPlot.Panels.ColorBar bar = plot.Add.ColorBar(map);
        bar.Label = "gauge pressure [kPa]";
        bar.LabelStyle.FontSize = Figure.Text;
        bar.Axis.TickLabelStyle.FontSize = Figure.Text - 2;
    }

#pragma warning disable CA1814 // rectangular arrays are what maps and contours are drawn from
    /// <summary>A column of the profiles as a map, the nozzle's end of the tube on top.</summary>
    private static double[,] Rows(GapRun run, Func<GapProfile, ReadOnlyMemory<double>> column, Func<double, double> scale)
    {
        int cells = run.Profiles[0].Station_m.Length;
        double[,] map = new double[cells, run.Profiles.Length];
        for (int k = 0; k < run.Profiles.Length; k++)
        {
            for (int i = 0; i < cells; i++)
                map[cells - 1 - i, k] = scale(column(run.Profiles[k]).Span[i]);
        }

        return map;
    }

    /// <summary>Share of products over time and station.</summary>
    private static Coordinates3d[,] Products(GapRun run)
    {
        int cells = run.Profiles[0].Station_m.Length;
        var map = new Coordinates3d[cells, run.Profiles.Length];
        for (int k = 0; k < run.Profiles.Length; k++)
        {
            GapProfile profile = run.Profiles[k];
            for (int i = 0; i < cells; i++)
                map[i, k] = new Coordinates3d(profile.Time.Milliseconds, 1e3 * profile.Station_m.Span[i], profile.Products.Span[i]);
        }

        return map;
    }
#pragma warning restore CA1814

    /// <summary>
    /// The grain surface until the joint opens, in all corners of fresh faces, speed and particle efficiency; the
    /// fourth unknown of a bracket, the ignition temperature, is the band to reach.
    /// </summary>
    private static Plot Race()
    {
        Plot plot = Figure.New("The race over what is unknown: 250 mm, one 6 mm hole", "time since burn-through [ms]", "grain surface [K]");
        BracketUnknown[] unknowns = [.. BracketEnds.Of(Gap())];
        double low = Ignition(unknowns[3].AtLow(Gap())), nominalIgnition = Ignition(Gap()), high = Ignition(unknowns[3].AtHigh(Gap()));
        plot.Band([(0, low, high), (End_ms, low, high)], Figure.Grey);
        GapRun[] runs = [.. Enumerable.Range(0, 8).Select(k => Corner(unknowns, k).Solve())];
        plot.Band([.. Envelope([.. runs.Where((_, k) => (k & 1) == 0)])], Figure.Blue);
        plot.Band([.. Envelope([.. runs.Where((_, k) => (k & 1) == 1)])], Figure.Red);
        double[] opens = [.. runs.Select(r => r.TimeOf(GapEventKind.JointOpens)?.Milliseconds).OfType<double>()];
        GapRun nominal = Gap().Solve();
        plot.Course(nominal, Colors.Black, 3);
        for (int k = 0; k < runs.Length; k++)
            plot.Course(runs[k], (k & 1) == 0 ? Figure.Blue : Figure.Red, 1.2f);
        plot.Line([(0, nominalIgnition), (End_ms, nominalIgnition)], Figure.Grey).LinePattern = LinePattern.Dashed;
        plot.Note(FormattableString.Invariant($"ignition: {low:F0} to {high:F0} K, nominal {nominalIgnition:F0} K"),
            End_ms, high, Figure.Grey, Alignment.LowerRight);
        plot.Add.HorizontalSpan(opens.Min(), opens.Max(), Figure.Red.WithAlpha(0.08)).LineStyle.Width = 0;
        plot.Note(FormattableString.Invariant($"fresh faces lit at once:\nthe joint opens (x), {opens.Min():F1} to {opens.Max():F1} ms"),
            0.3, 1010, Figure.Red);
        plot.Note("fresh faces never lit: the joint holds", 14, 310, Figure.Blue);
        double lit = nominal.TimeOf(GapEventKind.Lit)!.Value.Milliseconds;
        double open = nominal.TimeOf(GapEventKind.JointOpens)!.Value.Milliseconds;
        plot.Note(FormattableString.Invariant($"nominal: lit at {lit:F1} ms,\nthe joint opens at {open:F1} ms"), 21.7, 560, Colors.Black);
        return plot.Limits(0, End_ms, 250, 1100);
    }

    private static double Ignition(GapProblem gap) => gap.Design.Grain.IgnitionTemperature.Kelvins;

    private static GapProblem Corner(BracketUnknown[] unknowns, int k)
    {
        GapProblem at = Gap();
        for (int i = 0; i < 3; i++)
            at = (k >> i & 1) == 0 ? unknowns[i].AtLow(at) : unknowns[i].AtHigh(at);
        return at;
    }

    /// <summary>Lowest and highest surface of those runs whose joint still holds.</summary>
    private static IEnumerable<(double X, double Low, double High)> Envelope(GapRun[] runs)
    {
        for (int i = 0; i <= 300; i++)
        {
            double t = End_ms * i / 300;
            var time = Duration.FromMilliseconds(t);
            double[] surface = [.. runs.Where(r => r.End >= time).Select(r => r.At(time).GrainSurface.Kelvins)];
            if (surface.Length > 0)
                yield return (t, surface.Min(), surface.Max());
        }
    }

    private static void Band(this Plot plot, (double X, double Low, double High)[] points, Color colour)
    {
        double[] x = [.. points.Select(p => p.X)], low = [.. points.Select(p => p.Low)], high = [.. points.Select(p => p.High)];
        FillY band = plot.Add.FillY(x, low, high);
        (band.FillColor, band.LineWidth, band.MarkerSize) = (colour.WithAlpha(0.15), 0, 0);
    }

    /// <summary>The surface in one run; a cross where its joint opens.</summary>
    private static void Course(this Plot plot, GapRun run, Color colour, float width)
    {
        (double X, double Y)[] points = [.. Surface(run).Where(p => p.Item1 <= End_ms)];
        plot.Line(points, colour).LineWidth = width;
        if (run.TimeOf(GapEventKind.JointOpens) is not null)
            plot.Add.Marker(points[^1].X, points[^1].Y, MarkerShape.Eks, 12, colour);
    }

    private static IEnumerable<(double, double)> Surface(GapRun run)
    {
        GapColumns columns = run.Sample(Duration.FromMicroseconds(50));
        for (int i = 0; i < columns.Time_s.Length; i++)
            yield return (1e3 * columns.Time_s.Span[i], columns[GapChannel.GrainSurface].Span[i]);
    }

    /// <summary>Probability of lighting with its interval, and what common practice says (no source).</summary>
    private static Plot Odds()
    {
        Plot plot = Figure.New("How often one 6 mm hole lights, over all judged inputs", "length of the gap [mm]",
            "probability of lighting [-]");
        foreach (double length in (ReadOnlySpan<double>)[50, 85, 120, 180, 250, 350, 460, 600, 750, 900])
        {
            ReliabilityRun run = OddsByLength.Of(length);
            Interval interval = run.Probability("lit").ClopperPearson(0.95);
            plot.Line([(length, interval.Low), (length, interval.High)], Figure.Blue);
            plot.Add.Marker(length, (double)run.Outcomes.GetValueOrDefault("lit") / run.Cases, MarkerShape.FilledCircle, 12, Figure.Blue);
        }

        foreach ((double length, string says) in (ReadOnlySpan<(double, string)>)
            [(250, "dependable"), (460, "has been flown"), (900, "doubtful")])
        {
            plot.Line([(length, 0.85), (length, 0.93)], Figure.Red).LineWidth = 1.5f;
            plot.Note(says, length, 0.94, 1, Alignment.LowerCenter);
        }

        plot.Note("practice:", 20, 0.94, 1);
        plot.Note("model: 128 draws for each length, bars hold the probability at 95 %", 20, 0.38, 0);
        return plot.Limits(0, 980, 0, 1.03);
    }

    private static Scatter Line(this Plot plot, (double X, double Y)[] points, Color colour)
    {
        Scatter line = plot.Add.ScatterLine(points.Select(p => p.X).ToArray(), points.Select(p => p.Y).ToArray(), colour);
        line.LineWidth = 3;
        return line;
    }

    private static GapProblem Gap()
    {
        GapProblem start = StartingGaps.Bore18mm;
        GuideTube tube = start.Design.Tube with { Length = Length.FromMillimeters(Length_mm) };
        var hole = new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = 1 };
        return start with
        {
            Design = start.Design with { Tube = tube, Vents = [Vent.BelowNozzle(tube, hole, Length.FromMillimeters(1))] },
        };
    }
}
