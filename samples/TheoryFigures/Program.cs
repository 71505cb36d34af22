// Draws the figures of the theory pages from the library itself.
//   dotnet run --project samples/TheoryFigures [-- DIR [GROUP]]     (default: figures, all groups but odds: minutes)
//   dotnet run --project samples/TheoryFigures -- --tables prints the tables of the page that compares the models
//   dotnet run --project samples/TheoryFigures -- --check FILE tells whether that page still holds them; 0 yes, 1 no
//   dotnet run --project samples/TheoryFigures -- --write FILE brings it up to date
using Samples;
using TheoryFigures;

if (args is ["--tables"] or ["--check" or "--write", _])
    return Page.Answer(args[0] == "--tables" ? [] : args, ModelTables.All());

const string Slow = "odds"; // drawn only where it is asked for
string folder = args.Length > 0 ? args[0] : "figures";
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
if (args is [_, string only] && !groups.ContainsKey(only))
{
    Console.Error.WriteLine($"error: {only} is no group; there are {string.Join(", ", groups.Keys)}.");
    return 2;
}

Directory.CreateDirectory(folder);
foreach ((string name, ScottPlot.Plot plot) in groups.Where(g => args.Length > 1 ? g.Key == args[1] : g.Key != Slow).SelectMany(g => g.Value()))
{
    plot.Save(folder, name);
    Console.WriteLine($"figure: {name}");
}

return 0;
