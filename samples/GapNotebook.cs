#:project ../src/Staging.Core/Staging.Core.csproj
#:package ScottPlot
#:property PublishAot=false
// %% [markdown]
// # How the gap of an invented rocket fills, and whether that lights the motor
//
// A notebook in the percent format: each `// %%` begins a cell, which editors that know the format run one by one. As it
// stands it is also a script: `dotnet run samples/GapNotebook.cs [-- DIR]` runs all cells and writes the figures to DIR
// (default: figures). In a notebook, begin with `#r "nuget: Staging.Core"` and `#r "nuget: ScottPlot"` in place of the lines
// above. Test a gap on the ground, at a distance, before it flies; what is computed permits nothing.

// %%
using System.Globalization;
using ScottPlot;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
string folder = args.Length > 0 ? args[0] : "figures";
Directory.CreateDirectory(folder);

// %% [markdown]
// ## One run
// A tube of 18 mm bore and 120 mm length above a booster that burns through, with one hole of 6 mm below the upper nozzle.

// %%
GapProblem gap = Gap(120);
GapRun run = gap.Solve();
Console.WriteLine(run);

// %%
GapColumns course = run.Sample(Duration.FromMicroseconds(50));
double[] ms = [.. course.Time_s.ToArray().Select(t => 1e3 * t)];
using var pressure = new Plot();
Line(pressure, ms, [.. course[GapChannel.GapPressure].ToArray().Select(p => 1e-3 * p)], "#0072B2");
Save(pressure, "time since burn-through [ms]", "gap pressure [kPa]", "notebook-pressure");

// %%
using var surface = new Plot();
Line(surface, ms, course[GapChannel.GrainSurface].ToArray(), "#D55E00");
surface.Add.HorizontalLine(gap.Design.Grain.IgnitionTemperature.Kelvins, 1, Colors.Grey);
Save(surface, "time since burn-through [ms]", "grain surface [K]; grey: ignition", "notebook-surface");

// %% [markdown]
// ## Which gap length
// The same hole, gaps from 40 to 400 mm: how hot does the grain get, and when?

// %%
Axis lengths = Axis.Even("gap", "mm", 40, 400, 13);
SweepLine<GapRun> line = Sweep.Along(lengths, (mm, stop) => Gap(mm).Solve(cancellationToken: stop));
foreach ((double mm, GapRun at) in lengths.Values.Zip(line.Results))
    Console.WriteLine($"{mm,4:F0} mm: {at.Outcome.GetType().Name,-12} {at.PeakGrainSurface.Kelvins,5:F0} K");

// %%
using var hottest = new Plot();
Line(hottest, [.. lengths.Values], [.. line.Results.Select(r => r.PeakGrainSurface.Kelvins)], "#009E73");
hottest.Add.HorizontalLine(gap.Design.Grain.IgnitionTemperature.Kelvins, 1, Colors.Grey);
Save(hottest, "gap [mm]", "hottest grain surface [K]; grey: ignition", "notebook-lengths");

// %% [markdown]
// ## How sure is that
// Seventeen inputs are judged, none of them measured. The share of cases that light says how much hangs on them.

// %%
ReliabilityRun odds = new ReliabilityStudy<GapProblem, GapRun>
{
    Inputs = new(gap, GapInputs.Judged),
    Model = (problem, stop) => problem.Solve(options: SolverOptions.ForStudies, cancellationToken: stop),
    Outcome = r => r.Outcome.IsLitBeforeParting ? "lit" : "dark",
    Measures = [new("hottest", "K", r => r.PeakGrainSurface.Kelvins)],
    Cases = 64,
    KeepCases = true,
}.Run();
Console.WriteLine($"lit: {odds.Probability("lit")}, by the score {odds.Probability("lit").Wilson()}");
Console.WriteLine(odds.Measure("hottest"));

// %%
static GapProblem Gap(double mm) => StartingGaps.Bore18mm.With(length: Length.FromMillimeters(mm), breakaway: Force.FromNewtons(40))
    .WithVents(new VentLayout { HoleCount = 1 }, Area.FromSquareMillimeters(28));

static void Line(Plot plot, double[] x, double[] y, string colour)
{
    var line = plot.Add.ScatterLine(x, y);
    (line.Color, line.LineWidth) = (Color.FromHex(colour), 2);
}

void Save(Plot plot, string x, string y, string name)
{
    plot.Font.Set("DejaVu Sans");
    plot.XLabel(x, 15);
    plot.YLabel(y, 15);
    (plot.Axes.Bottom.Label.Bold, plot.Axes.Left.Label.Bold) = (false, false);
    // As wide as its frame allows, and without serifs where the typeface is not installed.
    string svg = plot.GetSvgXml(640, 400).Replace("height=\"400\">", "height=\"400\" viewBox=\"0 0 640 400\">", StringComparison.Ordinal)
        .Replace("font-family=\"DejaVu Sans\"", "font-family=\"DejaVu Sans, Verdana, sans-serif\"", StringComparison.Ordinal);
    File.WriteAllText(Path.Combine(folder, name + ".svg"), svg);
    plot.SavePng(Path.Combine(folder, name + ".png"), 640, 400);
    Console.WriteLine($"written: {name}.svg");
}
