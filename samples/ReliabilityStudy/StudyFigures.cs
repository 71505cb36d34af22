using System.Collections.Immutable;
using ScottPlot;
using ScottPlot.Plottables;
using Staging.Core.Studies;

namespace ReliabilityStudy;

/// <summary>Two figures: how high it goes, and what matters. Colours of M. Okabe and K. Ito (2008).</summary>
internal static class StudyFigures
{
    private const int Width = 900, Height = 480, HeightOfMany = 640;

    private static readonly Color Blue = Color.FromHex("#0072B2"), Red = Color.FromHex("#D55E00");

    public static void Write(ReliabilityRun run, ImmutableArray<MorrisEffect> effects, string folder)
    {
        using Plot apogee = Apogee(run), matters = Matters(effects);
        Save(apogee, Path.Combine(folder, "reliability-apogee"), Height);
        Save(matters, Path.Combine(folder, "reliability-matters"), HeightOfMany);
    }

    /// <summary>Share of the cases that stay below a height, lit and unlit apart.</summary>
    private static Plot Apogee(ReliabilityRun run)
    {
        Plot plot = NewPlot($"Apogee of {run.Cases} flights of the invented demo, judged inputs uncertain", "apogee [m]");
        CaseColumns columns = run.Columns();
        int column = columns.Measures.Select((m, i) => (m, i)).First(p => p.m.Name.Name == "apogee").i;
        foreach ((string outcome, Color colour) in new[] { ("lit", Blue), ("unlit", Red) })
        {
            double[] heights = [.. Enumerable.Range(0, columns.Outcome.Length).Where(i => columns.Outcome[i] == outcome)
                .Select(i => columns.Measures[column].At(i)).OfType<double>().Order()];
            if (heights.Length == 0)
                continue;
            double[] shares = [.. heights.Select((_, i) => (i + 1.0) / run.Cases)];
            Scatter line = plot.Add.ScatterLine(heights, shares, colour);
            (line.LineWidth, line.ConnectStyle) = (3, ConnectStyle.StepHorizontal);
            line.LegendText =
                $"upper stage "
                    + $"{outcome}: {run.Probability(outcome).Estimate:P0} ({100 * run.Probability(outcome).ClopperPearson().Low:F0} to {100 * run.Probability(outcome).ClopperPearson().High:F0} % at 95 %)";
        }

        Name(plot.Axes.Left, "share of all flights below [-]");
        plot.ShowLegend(Alignment.UpperLeft).FontSize = 16;
        return plot;
    }

    private static Plot Matters(ImmutableArray<MorrisEffect> effects)
    {
        Plot plot = NewPlot("What moves the margin of the grain surface over ignition",
            "mean absolute effect over the range of the input [K], 95 % interval");
        for (int i = 0; i < effects.Length; i++)
        {
            MorrisEffect effect = effects[^(i + 1)];
            Rectangle bar = plot.Add.Rectangle(0, effect.MeanAbsolute, i - 0.3, i + 0.3);
            (bar.FillStyle.Color, bar.LineStyle.Width) = (Blue.WithAlpha(0.75), 0);
            double[] ends = [Math.Max(0, effect.MeanAbsoluteInterval.Low), effect.MeanAbsoluteInterval.High], at = [i, i];
            plot.Add.ScatterLine(ends, at, Colors.Black).LineWidth = 2;
        }

        plot.Axes.Left.SetTicks([.. Enumerable.Range(0, effects.Length).Select(i => (double)i)],
            [.. effects.Reverse().Select(e => e.Input.Name)]);
        plot.Axes.Left.TickLabelStyle.FontSize = 16;
        plot.Axes.SetLimits(0, 1.1 * effects.Max(e => e.MeanAbsoluteInterval.High), -0.6, effects.Length - 0.4);
        return plot;
    }

    private static Plot NewPlot(string title, string bottom)
    {
        var plot = new Plot();
        plot.Title(title, 18);
        plot.Axes.Title.Label.Bold = false;
        plot.Grid.MajorLineColor = Colors.Black.WithAlpha(0.08);
        Name(plot.Axes.Bottom, bottom);
        return plot;
    }

    private static void Name(IAxis axis, string text)
    {
        axis.Label.Text = text;
        (axis.Label.FontSize, axis.TickLabelStyle.FontSize) = (18, 16);
        axis.Label.Bold = false;
    }

    private static void Save(Plot plot, string path, int height)
    {
        plot.SaveSvg(path + ".svg", Width, height);
        plot.SavePng(path + ".png", Width, height);
    }
}
