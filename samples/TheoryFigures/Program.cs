// Draws the figures of the theory pages from the library itself.
//   dotnet run --project samples/TheoryFigures [-- DIR]     (default: figures)
using TheoryFigures;

string folder = args.Length > 0 ? args[0] : "figures";
Directory.CreateDirectory(folder);
foreach ((string name, ScottPlot.Plot plot) in DischargeFigures.All().Concat(GasFigures.All()).Concat(ShockFigures.All()).Concat(VesselFigures.All()).Concat(ResolvedFigures.All()))
{
    plot.SaveSvg(Path.Combine(folder, name + ".svg"), Sheet.Width, Sheet.Height);
    plot.SavePng(Path.Combine(folder, name + ".png"), Sheet.Width, Sheet.Height);
    Console.WriteLine($"figure: {name}");
}
