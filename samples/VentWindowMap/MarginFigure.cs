using Samples;
using ScottPlot;
using ScottPlot.Plottables;
using Staging.Core.Gaps;
using Staging.Core.Studies;

namespace VentWindowMap;

/// <summary>
/// Outcome and margin over gap length and vent area: a colour for what comes of it, a number for how far.
/// </summary>
internal static class MarginFigure
{
    private static readonly (string Label, Color Colour)[] Kinds =
    [
        ("lights", Figure.Sky), ("pushed apart first", Figure.Red),
        ("too cool", Figure.Yellow), ("other", Figure.Grey),
    ];

    /// <summary>Highest surface temperature of the grain above its ignition temperature [K].</summary>
    public static double Margin_K(GapRun run) => run.PeakGrainSurface.Kelvins - run.Problem.Design.Grain.IgnitionTemperature.Kelvins;

    public static Plot Draw(SweepMap<GapRun> map)
    {
        Plot plot = Figure.New("Outcome, and margin over ignition [K] (18 mm bore, 20 N joint, invented motor)",
            "gap between the motors [mm]", "total vent area [mm2]");
        plot.HideGrid();
        for (int up = 0; up < map.Up.Values.Length; up++)
        {
            for (int across = 0; across < map.Across.Values.Length; across++)
                Cell(plot, across, up, map.At(across, up));
        }

        foreach ((string label, Color colour) in Kinds.Where(kind => map.Results.Any(r => KindOf(r.Outcome) == kind)))
            plot.Legend.ManualItems.Add(new LegendItem { LabelText = label, FillColor = colour, LabelFontSize = Figure.Text - 3 });
        plot.Axes.Bottom.SetTicks([.. map.Across.Values.Select((_, i) => (double)i)], [.. map.Across.Values.Select(v => $"{v:F0}")]);
        plot.Axes.Left.SetTicks([.. map.Up.Values.Select((_, i) => (double)i)],
            [.. map.Up.Values.Select(v => v < 10 ? $"{v:F1}" : $"{v:F0}")]);
        plot.Axes.SetLimits(-0.5, map.Across.Values.Length - 0.5, -0.5, map.Up.Values.Length - 0.5);
        plot.ShowLegend(Edge.Bottom);
        return plot;
    }

    private static void Cell(Plot plot, int across, int up, GapRun run)
    {
        Rectangle cell = plot.Add.Rectangle(across - 0.5, across + 0.5, up - 0.5, up + 0.5);
        (cell.FillStyle.Color, cell.LineStyle.Color, cell.LineStyle.Width) = (KindOf(run.Outcome).Colour.WithAlpha(0.75), Colors.White, 1);
        plot.Note($"{Margin_K(run):+0;-0;0}", across, up, Colors.Black, Alignment.MiddleCenter);
    }

    private static (string Label, Color Colour) KindOf(GapOutcome outcome) => outcome switch
    {
        GapOutcome.Lit => Kinds[0],
        GapOutcome.PushedApart => Kinds[1],
        GapOutcome.TooCool => Kinds[2],
        _ => Kinds[3],
    };
}
