using System.Collections.Immutable;
using Samples;
using ScottPlot;
using ScottPlot.Plottables;
using Staging.Core.Studies;

namespace ReliabilityStudy;

/// <summary>Two figures: how high it goes, and what matters.</summary>
internal static class StudyFigures
{
    private const int HeightOfMany = 640;

    public static void Write(ReliabilityRun run, ImmutableArray<MorrisEffect> effects, string folder)
    {
        using Plot apogee = Apogee(run), matters = Matters(effects);
        apogee.Save(folder, "reliability-apogee");
        matters.Save(folder, "reliability-matters", HeightOfMany);
    }

    /// <summary>Share of the cases that stay below a height, lit and unlit apart.</summary>
    private static Plot Apogee(ReliabilityRun run)
    {
        Plot plot = Figure.New($"Apogee of {run.Cases} flights of the invented demo, judged inputs uncertain", "apogee [m]",
            "share of all flights below [-]");
        CaseColumns columns = run.Columns();
        int column = columns.Measures.Select((m, i) => (m, i)).First(p => p.m.Name.Name == "apogee").i;
        foreach ((string outcome, Color colour) in new[] { ("lit", Figure.Blue), ("unlit", Figure.Red) })
        {
            double[] heights = [.. Enumerable.Range(0, columns.Outcome.Length).Where(i => columns.Outcome[i] == outcome)
                .Select(i => columns.Measures[column].At(i)).OfType<double>().Order()];
            if (heights.Length == 0)
                continue;
            double[] shares = [.. heights.Select((_, i) => (i + 1.0) / run.Cases)];
            Scatter line = plot.Add.ScatterLine(heights, shares, colour);
            (line.LineWidth, line.ConnectStyle) = (3, ConnectStyle.StepHorizontal);
            Interval at95 = run.Probability(outcome).ClopperPearson();
            line.LegendText = $"upper stage {outcome}: {run.Probability(outcome).Estimate:P0} "
                + $"({100 * at95.Low:F0} to {100 * at95.High:F0} % at 95 %)";
        }

        plot.Legend(Alignment.UpperLeft);
        return plot;
    }

    private static Plot Matters(ImmutableArray<MorrisEffect> effects)
    {
        Plot plot = Figure.New("What moves the margin of the grain surface over ignition",
            "mean absolute effect over the range of the input [K], 95 % interval", "");
        for (int i = 0; i < effects.Length; i++)
        {
            MorrisEffect effect = effects[^(i + 1)];
            Rectangle bar = plot.Add.Rectangle(0, effect.MeanAbsolute, i - 0.3, i + 0.3);
            (bar.FillStyle.Color, bar.LineStyle.Width) = (Figure.Blue.WithAlpha(0.75), 0);
            double[] ends = [Math.Max(0, effect.MeanAbsoluteInterval.Low), effect.MeanAbsoluteInterval.High], at = [i, i];
            plot.Add.ScatterLine(ends, at, Colors.Black).LineWidth = 2;
        }

        plot.Axes.Left.SetTicks([.. Enumerable.Range(0, effects.Length).Select(i => (double)i)],
            [.. effects.Reverse().Select(e => e.Input.Name)]);
        plot.Axes.SetLimits(0, 1.1 * effects.Max(e => e.MeanAbsoluteInterval.High), -0.6, effects.Length - 0.4);
        return plot;
    }
}
