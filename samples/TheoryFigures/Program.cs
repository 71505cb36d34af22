// Draws the figures of the theory pages from the library itself.
//   dotnet run --project samples/TheoryFigures [-- DIR]             (default: figures)
//   dotnet run --project samples/TheoryFigures -- --tables prints the tables of the page that compares the models
//   dotnet run --project samples/TheoryFigures -- --check FILE tells whether that page still holds them; 0 yes, 1 no
//   dotnet run --project samples/TheoryFigures -- --write FILE brings it up to date
using GapRows;
using TheoryFigures;

if (args is ["--tables"])
{
    Console.WriteLine(string.Join("\n\n", ModelTables.All().Values.Select(t => string.Join('\n', t))));
    return 0;
}

if (args is ["--check" or "--write", string path])
{
    if (!File.Exists(path))
    {
        Console.Error.WriteLine($"error: there is no file {path}.");
        return 2;
    }

    string page = File.ReadAllText(path), now = Page.With(page, ModelTables.All());
    if (args[0] == "--write")
    {
        File.WriteAllText(path, now);
        return 0;
    }

    foreach (string line in now.Split('\n').Except(page.Split('\n')))
        Console.WriteLine($"{path} should say: {line}");
    Console.WriteLine(now == page ? $"{path} holds the tables" : $"{path} is out of step with the library; --write brings it up to date");
    return now == page ? 0 : 1;
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

return 0;
