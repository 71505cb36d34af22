// The vent-window map: which total vent areas light the upper motor, for a range of gap lengths, at the nominal numbers and at a probability.
//   dotnet run --project samples/VentWindowMap [-- DIR [full]]     (default: figures, coarse)
using System.Globalization;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Reviews;
using Staging.Core.Studies;
using UnitsNet;
using VentWindowMap;

string folder = args.Length > 0 ? args[0] : "figures";
bool full = args.Length > 1 && args[1] == "full";
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
Directory.CreateDirectory(folder);

#region vent-window-map
var nominal = new GapQuestion
{
    Problem = StartingGaps.Bore18mm, // invented, with a reason for every number
    Layout = new VentLayout { HoleCount = 4, WallThickness = Length.FromMillimeters(0.5), Land = Length.FromMillimeters(1), Drills = DrillSeries.MetricHalves },
};
GapQuestion assured = nominal with
{
    Uncertain = GapInputs.Judged,
    Asked = new Assurance { Probability = 0.5, Confidence = 0.8, Cases = full ? 80 : 25 },
};
Axis gaps = Axis.Even("gap", "mm", 40, 280, full ? 13 : 5);
Axis areas = Axis.Factors("vent area", "mm2", 5, 500, full ? 16 : 8);
SweepLine<WindowResult> map = nominal.VentWindows(gaps, areas), sure = assured.VentWindows(gaps, areas);
#endregion

Console.WriteLine("| gap [mm] | lights, nominal [mm2] | lights in half of the cases or more, judged inputs uncertain [mm2] |");
Console.WriteLine("|---|---|---|");
for (int i = 0; i < gaps.Values.Length; i++)
    Console.WriteLine($"| {gaps.Values[i]:F0} | {Say(map.Results[i])} | {Say(sure.Results[i])} |");

#region vent-window-questions
WindowResult longest = nominal.LongestGap(Area.FromSquareMillimeters(113), Axis.Even("gap", "mm", 40, 280, 7));
WindowResult hold = nominal.LeastRetention(Length.FromMillimeters(120), Area.FromSquareMillimeters(60), Axis.Even("breakaway", "N", 5, 60, 12));
#endregion
Console.WriteLine();
Console.WriteLine($"four 6 mm holes (113 mm2): {longest.Match(w => $"lights gaps from {Say(w)} mm", _ => "lights no gap of 40 to 280 mm")}");
Console.WriteLine($"120 mm with 60 mm2: {hold.Match(w => $"lights with a joint that breaks away at {Say(w)} N", _ => "no joint of 5 to 60 N helps")}");

string figure = Path.Combine(folder, "vent-window");
using ScottPlot.Plot plot = MapFigure.Draw(map, sure);
plot.SaveSvg(figure + ".svg", MapFigure.Width, MapFigure.Height);
plot.SavePng(figure + ".png", MapFigure.Width, MapFigure.Height);
Console.WriteLine($"figure: {figure}.svg");

static string Say(WindowResult result) => result.Match(found => string.Join("; ", found.Windows.Select(Edges)), _ => "none");

static string Edges(Window w) => $"{(w.LowIsEndOfSearch ? "below " : "")}{w.Low:F0} to {(w.HighIsEndOfSearch ? "above " : "")}{w.High:F0}";
