// Draws the figures of the theory pages from the library itself.
//   dotnet run --project samples/TheoryFigures [-- DIR]             (default: figures)
//   dotnet run --project samples/TheoryFigures -- --tables prints the tables of the page that compares the models
//   dotnet run --project samples/TheoryFigures -- --check FILE tells whether that page still holds them; 0 yes, 1 no
//   dotnet run --project samples/TheoryFigures -- --write FILE brings it up to date
using Samples;
using TheoryFigures;

if (args is ["--tables"] or ["--check" or "--write", _])
    return Page.Answer(args[0] == "--tables" ? [] : args, ModelTables.All());

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
    plot.Save(folder, name);
    Console.WriteLine($"figure: {name}");
}

return 0;
