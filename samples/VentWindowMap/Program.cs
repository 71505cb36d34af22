// The vent-window map: which total vent areas light the upper motor, for a range of gap lengths, at the nominal numbers and at a probability.
//   dotnet run --project samples/VentWindowMap [-- DIR [full]]     (default: figures, coarse)
//   dotnet run --project samples/VentWindowMap -- --check FILE     (the table in FILE still holds: all of its nominal column, every fifth row of the other)
using System.Globalization;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Reviews;
using Staging.Core.Studies;
using UnitsNet;
using VentWindowMap;

bool check = args is ["--check", _];
string folder = args.Length > 0 ? args[0] : "figures";
bool full = check || (args.Length > 1 && args[1] == "full");
int lengths = full ? 16 : 6, assuredLengths = check ? 4 : lengths;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

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
Axis gaps = Axis.Even("gap", "mm", 40, 340, lengths), assuredGaps = Axis.Even("gap", "mm", 40, 340, assuredLengths);
Axis areas = Axis.Factors("vent area", "mm2", 5, 500, full ? 16 : 8);
SweepLine<WindowResult> map = nominal.VentWindows(gaps, areas), sure = assured.VentWindows(assuredGaps, areas);
#endregion

if (check)
    return TableCheck.Of(args[1], map, sure);
Directory.CreateDirectory(folder);
Console.WriteLine("| gap [mm] | lights, nominal [mm2] | lights in half of the cases or more, judged inputs uncertain [mm2] |");
Console.WriteLine("|---|---|---|");
for (int i = 0; i < gaps.Values.Length; i++)
    Console.WriteLine($"| {gaps.Values[i]:F0} | {TableCheck.Say(map.Results[i])} | {TableCheck.Say(sure.Results[i])} |");

#region vent-window-questions
WindowResult longest = nominal.LongestGap(Area.FromSquareMillimeters(113), Axis.Even("gap", "mm", 40, 340, 6));
WindowResult hold = nominal.LeastRetention(Length.FromMillimeters(120), Area.FromSquareMillimeters(60), Axis.Even("breakaway", "N", 5, 60, 12));
#endregion
Console.WriteLine();
Console.WriteLine($"four 6 mm holes (113 mm2): {longest.Match(w => $"lights gaps from {TableCheck.Say(w)} mm", _ => "lights no gap of 40 to 340 mm")}");
Console.WriteLine($"120 mm with 60 mm2: {hold.Match(w => $"lights with a joint that breaks away at {TableCheck.Say(w)} N", _ => "no joint of 5 to 60 N helps")}");

string figure = Path.Combine(folder, "vent-window");
using ScottPlot.Plot plot = MapFigure.Draw(map, sure);
plot.SaveSvg(figure + ".svg", MapFigure.Width, MapFigure.Height);
plot.SavePng(figure + ".png", MapFigure.Width, MapFigure.Height);
Console.WriteLine($"figure: {figure}.svg");
return 0;
