// The vent-window map: which total vent areas light the upper motor, for a range of gap lengths, at the nominal numbers
// and at a probability; and how likely each length and area lights.
//   dotnet run --project samples/VentWindowMap [-- DIR [full]]     (default: figures, coarse)
//   dotnet run --project samples/VentWindowMap -- --check FILE [DIR] (does the table in FILE still hold: all of its
//   nominal column, the first and last row of the other, and what is asked of the demo plan; 0 yes, 1 no)
using System.Globalization;
using Samples;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;
using VentWindowMap;

bool check = args is ["--check", _] or ["--check", _, _];
if (!check && args.Any(a => a.StartsWith('-')))
{
    Console.Error.WriteLine("error: [DIR [full] | --check FILE [DIR]] is what can be asked.");
    return 2;
}

string folder = args.Length == 0 ? "figures" : check ? args.ElementAtOrDefault(2) ?? "figures" : args[0];
bool full = check || (args.Length > 1 && args[1] == "full");
bool fine = full && !check;
int lengths = full ? 9 : 5, assuredLengths = check ? 2 : lengths;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

#region vent-window-map
var nominal = new GapQuestion
{
    Problem = StartingGaps.Bore18mm, // invented, with a reason for every number
    Layout = new VentLayout { HoleCount = 4 },
    Solver = SolverOptions.Default with { RelativeTolerance = 1e-5 }, // edges are asked to 2 %
};
GapQuestion assured = nominal with
{
    Uncertain = GapInputs.Judged,
    Asked = new Assurance { Probability = 0.5, Confidence = 0.8, Cases = full ? 40 : 20 },
};
Axis gaps = Axis.Even("gap", "mm", 40, 840, lengths), assuredGaps = Axis.Even("gap", "mm", 40, 840, assuredLengths);
Axis areas = Axis.Factors("vent area", "mm2", 5, 1000, full ? 16 : 8);
SweepLine<WindowResult> map = nominal.VentWindows(gaps, areas), sure = assured.VentWindows(assuredGaps, areas);
#endregion

#region vent-window-plan
StagingPlan plan = StagingPlan.Read(Path.Combine(AppContext.BaseDirectory, "demo", "plan.json")); // invented
GapQuestion inFlight = plan.QuestionBelow("sustainer") with { Solver = nominal.Solver }; // flies the plan to that gap
Length built = inFlight.Problem.Design.Tube.Length;
WindowResult vents = inFlight.VentWindow(built, areas);
WindowResult sureVents = (inFlight with { Uncertain = assured.Uncertain, Asked = assured.Asked }).VentWindow(built, areas);
WindowResult longest = inFlight.LongestGap(Area.FromSquareMillimeters(113), Axis.Even("gap", "mm", 40, 840, 6));
WindowResult hold = inFlight.MinRetention(built, Area.FromSquareMillimeters(28), Axis.Even("breakaway", "N", 5, 60, 12));
#endregion
(string Question, WindowResult Answer)[] asked =
[
    ("vent area, nominal [mm2]", vents), ("vent area, in half of the cases or more [mm2]", sureVents),
    ("gap length with 113 mm2 [mm]", longest), ("breakaway force with 28 mm2 [N]", hold),
];

int wrong = check ? TableCheck.Of(args[1], map, sure, asked) : 0;
Directory.CreateDirectory(folder);
Console.WriteLine("| gap [mm] | lights, nominal [mm2] | lights in half of the cases or more, judged inputs uncertain [mm2] |");
Console.WriteLine("|---|---|---|");
for (int i = 0; i < gaps.Values.Length; i++)
    Console.WriteLine($"| {gaps.Values[i]:F0} | {TableCheck.Say(map.Results[i])} | {SureAt(gaps.Values[i])} |");
Console.WriteLine();
Console.WriteLine("| asked of the demo plan in flight | lights |");
Console.WriteLine("|---|---|");
foreach ((string question, WindowResult answer) in asked)
    Console.WriteLine($"| {question} | {TableCheck.Say(answer)} |");

#region gap-map
GapProblem GapOf(double mm, double mm2)
{
    GuideTube tube = nominal.Problem.Design.Tube with { Length = Length.FromMillimeters(mm) };
    return (nominal.Problem with { Design = nominal.Problem.Design with { Tube = tube } })
        .WithVents(nominal.Layout, Area.FromSquareMillimeters(mm2));
}

SweepMap<GapRun> runs = Sweep.Over(
    Axis.Even("gap", "mm", 40, 840, 13), Axis.Factors("vent area", "mm2", 5, 1000, 11),
    (mm, mm2, stop) => GapOf(mm, mm2).Solve(options: nominal.Solver, cancellationToken: stop));
using (StreamWriter csv = File.CreateText(Path.Combine(folder, "gap-map.csv")))
    runs.WriteCsv(csv, new Measure<GapRun>("lit", "-", r => r.Outcome.IsLit ? 1 : 0),
        new Measure<GapRun>("margin", "K", r => MarginFigure.Margin_K(r)));
#endregion
foreach (IGrouping<string, GapRun> kind in runs.Results.GroupBy(r => r.Outcome.GetType().Name))
    Console.WriteLine($"map of {runs.Results.Length} gaps: {kind.Key} {kind.Count()}, margin "
        + $"{kind.Min(MarginFigure.Margin_K):F0} to {kind.Max(MarginFigure.Margin_K):F0} K");

#region odds-map
GapQuestion judged = nominal with { Uncertain = GapInputs.Judged, Solver = SolverOptions.ForStudies };
OddsMap odds = judged.OddsOver(
    Axis.Even("gap", "mm", 40, 840, fine ? 41 : 11), Axis.Factors("vent area", "mm2", 5, 1000, fine ? 40 : 12), cases: fine ? 100 : 12);
Console.WriteLine(odds);
using (StreamWriter csv = File.CreateText(Path.Combine(folder, "odds-map.csv")))
    odds.WriteCsv(csv);
#endregion
using ScottPlot.Plot oddsPlot = OddsFigure.Draw(odds);
oddsPlot.Save(folder, "odds-map");
using ScottPlot.Plot margins = MarginFigure.Draw(runs);
margins.Save(folder, "gap-margin");
using ScottPlot.Plot plot = MapFigure.Draw(map, sure);
plot.Save(folder, "vent-window");
Console.WriteLine($"written to {folder}: vent-window.svg, gap-margin.svg, odds-map.svg, gap-map.csv, odds-map.csv");
return wrong == 0 ? 0 : 1;

string SureAt(double gap)
{
    int at = assuredGaps.Values.Items.IndexOf(gap);
    return at < 0 ? "not asked" : TableCheck.Say(sure.Results[at]);
}
