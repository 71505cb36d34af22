// Draws the figures of the theory pages from the library itself.
//   dotnet run --project samples/TheoryFigures [-- DIR]       (default: figures)
//   dotnet run --project samples/TheoryFigures -- --tables    prints the tables of the page that compares the models
using TheoryFigures;

if (args is ["--tables"])
{
    Console.WriteLine(string.Join('\n', ModelMap.Arrivals()));
    Console.WriteLine();
    Console.WriteLine(string.Join('\n', ModelMap.PeakPressures()));
    Console.WriteLine();
    Console.WriteLine(string.Join('\n', ModelMap.Openings()));
    Console.WriteLine();
    Console.WriteLine(string.Join('\n', Refinement.Table()));
    return;
}

string folder = args.Length > 0 ? args[0] : "figures";
IEnumerable<(string Name, ScottPlot.Plot Plot)>[] groups =
[
    DischargeFigures.All(),
    HoleFigures.All(),
    GasFigures.All(),
    ShockFigures.All(),
    VesselFigures.All(),
    FrontFigures.All(),
    GapFigures.All(),
    ResolvedFigures.All(),
    ModelFigures.All(),
    IgnitionFigures.All(),
    FlightFigures.All(),
];
Directory.CreateDirectory(folder);
foreach ((string name, ScottPlot.Plot plot) in groups.SelectMany(g => g))
{
    plot.SaveSvg(Path.Combine(folder, name + ".svg"), Sheet.Width, Sheet.Height);
    plot.SavePng(Path.Combine(folder, name + ".png"), Sheet.Width, Sheet.Height);
    Console.WriteLine($"figure: {name}");
}
