using Samples;
using ScottPlot;

namespace GapStagedFlight.Figures;

/// <summary>A finished figure.</summary>
internal sealed class DrawnFigure(Plot plot, IReadOnlyList<string> leftOut) : IDisposable
{
    public string Title => plot.Axes.Title.Label.Text;

    /// <summary>Words for which there was no room.</summary>
    public IReadOnlyList<string> LeftOut { get; } = leftOut;

    public string Svg() => Figure.Svg(plot);

    /// <summary>Writes SVG and PNG and gives the path without the ending.</summary>
    public string Save(string folder, string name) => plot.Save(folder, name);

    public void Dispose() => plot.Dispose();
}
