// How likely is the upper stage of the demo to light, how high does it go, and what matters most? Motors and rocket are
// invented.
//   dotnet run --project samples/ReliabilityStudy [-- DIR [CASES]]     (default: figures, 160 cases)
using System.Collections.Immutable;
using System.Globalization;
using ReliabilityStudy;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
string folder = args.Length > 0 ? args[0] : "figures";
int cases = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 160;
Directory.CreateDirectory(folder);
StagingPlan plan = StagingPlan.Read(Path.Combine(AppContext.BaseDirectory, "demo", "plan.json"));

#region plan-odds
Odds odds = plan.Odds(cases);
Console.WriteLine(odds);
Console.WriteLine(odds.WhatMatters());
#endregion
Console.WriteLine();

// The same with an input and measures of one's own.
#region reliability-study
StudyInput<StagingPlan> structure = PlanInputs.OfStage(
    "sustainer", "sustainer.structure", "g", Distribution.Normal(29, 1.5), (s, v) => s with { StructureMass = Mass.FromGrams(v) });

var study = new ReliabilityStudy<StagingPlan, FlightRun>
{
    Inputs = new(plan, [.. GapInputs.Judged.Select(i => i.Below("sustainer")), structure]),
    Model = (p, stop) => p.Flight.Fly(new FlightOptions { Scope = FlightScope.UppermostStage, KeepTracks = false }, cancellationToken: stop),
    Outcome = flight => flight.Stagings[0].Lit ? "lit" : "unlit",
    Measures =
    [
        new Measure<FlightRun>("lit after", "ms", f => (f.Stagings[0].Ignition - f.Stagings[0].State.Time)?.Milliseconds),
        new Measure<FlightRun>("margin", "K", f => Margin_K(f.GapRunBelow())),
        new Measure<FlightRun>("apogee", "m", f => f.Apogee?.Meters),
        new Measure<FlightRun>("landing energy", "J", f => (f.Main.Outcome as FlightOutcome.Landed)?.KineticEnergy.Joules),
    ],
    Cases = cases,
    KeepCases = true,
};
ReliabilityRun run = study.Run();

// How far the surface of the grain got above its ignition temperature; below 0 where it stayed too cool.
static double Margin_K(GapRun gap) => (gap.PeakGrainSurface - gap.Problem.Design.Grain.IgnitionTemperature).Kelvins;
#endregion

Console.WriteLine(run);
foreach (string outcome in run.Outcomes.Keys)
    Console.WriteLine($"{outcome}: {run.Probability(outcome)}, by the score {run.Probability(outcome).Wilson()}");
foreach (MeasureSummary measure in run.Measures)
    Console.WriteLine(measure);
MeasureSummary margins = run.Measure("margin");
foreach (Percentile part in new double[] { 5, 25, 50, 75, 95 }.Select(percent => margins.Percentile(percent)))
    Console.WriteLine($"margin, {part.Percent} % of the cases below: {part.Value:F0} K "
        + $"({part.Interval.Low:F0} to {part.Interval.High:F0} K at 95 %)");
foreach ((long number, string reason) in run.Refusals)
    Console.WriteLine($"case {number} was refused: {reason}");
using (StreamWriter csv = File.CreateText(Path.Combine(folder, "reliability-cases.csv")))
    run.Columns().WriteCsv(csv);

var sensitivity = new SensitivityStudy<GapProblem>
{
    Inputs = new(plan.GapBelow("sustainer"), GapInputs.Judged),
    Unit = "K",
    Model = (p, stop) => Margin_K(p.Solve(options: SolverOptions.ForStudies, cancellationToken: stop)),
};
ImmutableArray<MorrisEffect> effects = [.. sensitivity.Screen(paths: Math.Max(10, cases / 10)).OrderByDescending(e => e.MeanAbsolute)];
Console.WriteLine();
Console.WriteLine("what moves the margin of the grain surface over ignition:");
foreach (MorrisEffect effect in effects)
    Console.WriteLine($"  {effect.Input,-36} {effect.MeanAbsolute,5:F0} K over its range, acting with others or bending "
        + $"{effect.StandardDeviation,5:F0} K");

StudyFigures.Write(run, effects, folder);
Console.WriteLine($"written to {folder}: reliability-cases.csv, reliability-apogee.svg, reliability-matters.svg");
