// How likely is the upper stage of the demo to light, how high does it go, and what matters most? Motors and rocket are invented.
//   dotnet run --project samples/ReliabilityStudy [-- DIR [CASES]]     (default: figures, 400 cases)
using System.Collections.Immutable;
using System.Globalization;
using ReliabilityStudy;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Studies;
using UnitsNet;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
string folder = args.Length > 0 ? args[0] : "figures";
int cases = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 400;
Directory.CreateDirectory(folder);
StagingPlan plan = PlanDocument.Read(Path.Combine(AppContext.BaseDirectory, "demo", "plan.json"));

#region reliability-study
StudyInput<StagingPlan> structure = StudyInput.Of<StagingPlan>(
    "sustainer.structure", "g", Spread.Normal(38, 1.5), (p, v) => DemoPlan.WithStage(p, 1, s => s with { StructureMass = Mass.FromGrams(v) }));

var study = new ReliabilityStudy<StagingPlan, FlightRun>
{
    Inputs = InputSet.Of(plan, [.. GapInputs.Judged.Select(DemoPlan.InPlan), structure]),
    Model = (p, stop) => p.Flight.Fly(new FlightOptions { Scope = FlightScope.UppermostStage, KeepTracks = false }, cancellationToken: stop),
    Outcome = flight => flight.Stagings[0].Lit ? "lit" : "unlit",
    Measures =
    [
        Measure.Of<FlightRun>("lit after", "ms", f => (f.Stagings[0].Ignition - f.Stagings[0].State.Time)?.Milliseconds),
        Measure.Of<FlightRun>("apogee", "m", f => f.Apogee?.Meters),
        Measure.Of<FlightRun>("landing energy", "J", f => f.Main.Outcome is FlightOutcome.Landed landed ? landed.KineticEnergy.Joules : null),
    ],
    Cases = cases,
    KeepCases = true,
};
ReliabilityRun run = study.Run();
#endregion

Console.WriteLine(run);
foreach (string outcome in run.Outcomes.Keys)
    Console.WriteLine($"{outcome}: {run.Probability(outcome)}, by the score {run.Probability(outcome).Wilson()}");
foreach (MeasureSummary measure in run.Measures)
    Console.WriteLine(measure);
foreach ((long number, string reason) in run.Refusals)
    Console.WriteLine($"case {number} was refused: {reason}");
using (StreamWriter csv = File.CreateText(Path.Combine(folder, "reliability-cases.csv")))
    run.Columns().WriteCsv(csv);

var margin = new SensitivityStudy<GapProblem>
{
    Inputs = InputSet.Of(DemoPlan.GapOf(plan), GapInputs.Judged),
    Unit = "K",
    Model = (p, stop) => p.Solve(cancellationToken: stop).PeakGrainSurface.Kelvins - p.Design.Grain.IgnitionTemperature.Kelvins,
};
ImmutableArray<MorrisEffect> effects = [.. margin.Screen(paths: Math.Max(10, cases / 10)).OrderByDescending(e => e.MeanAbsolute)];
Console.WriteLine();
Console.WriteLine("what moves the margin of the grain surface over ignition:");
foreach (MorrisEffect effect in effects)
    Console.WriteLine($"  {effect.Input,-36} {effect.MeanAbsolute,5:F0} K over its range, acting with others or bending {effect.StandardDeviation,5:F0} K");

StudyFigures.Write(run, effects, folder);
Console.WriteLine($"written to {folder}: reliability-cases.csv, reliability-apogee.svg, reliability-matters.svg");
