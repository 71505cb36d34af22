// Draws the figures of the theory pages from the library itself.
//   dotnet run --project samples/TheoryFigures [-- DIR [GROUP]]     (default: figures, all groups but odds: minutes)
//   dotnet run --project samples/TheoryFigures -- --tables prints the tables of the page that compares the models
//   dotnet run --project samples/TheoryFigures -- --check FILE [DIR] tells whether that page still holds them, 0 yes, 1 no,
//   and draws all groups but odds into DIR
//   dotnet run --project samples/TheoryFigures -- --write FILE brings it up to date
using Samples;
using TheoryFigures;

if (args is ["--tables"] or ["--check" or "--write", _])
    return Page.Answer(args[0] == "--tables" ? [] : args, ModelTables.All());

const string Slow = "odds"; // drawn only where it is asked for
string? page = args is ["--check", _, _] ? args[1] : null;
string[] drawn = page is null ? args : args[2..];
string folder = drawn.Length > 0 ? drawn[0] : "figures";
var groups = new Dictionary<string, Func<IEnumerable<(string Name, ScottPlot.Plot Plot)>>>
{
    ["discharge"] = DischargeFigures.All,
    ["holes"] = HoleFigures.All,
    ["gases"] = GasFigures.All,
    ["shocks"] = ShockFigures.All,
    ["vessels"] = VesselFigures.All,
    ["fronts"] = FrontFigures.All,
    ["gap"] = GapFigures.All,
    ["resolved"] = ResolvedFigures.All,
    ["models"] = ModelFigures.All,
    ["ignition"] = IgnitionFigures.All,
    ["burn-through"] = BurnThroughFigures.All,
    [Slow] = BurnThroughFigures.Slow,
    ["flight"] = FlightFigures.All,
};
if (drawn is [_, string only] && !groups.ContainsKey(only))
{
    Console.Error.WriteLine($"error: {only} is no group; there are {string.Join(", ", groups.Keys)}.");
    return 2;
}

Directory.CreateDirectory(folder);
foreach ((string name, ScottPlot.Plot plot) in groups.Where(g => drawn.Length > 1 ? g.Key == drawn[1] : g.Key != Slow).SelectMany(g => g.Value()))
{
    plot.Save(folder, name);
    Console.WriteLine($"figure: {name}");
}

return page is null ? 0 : Page.Answer(["--check", page], ModelTables.All());
