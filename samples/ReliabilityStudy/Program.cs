// How likely is the upper stage of the demo to light, how high does it go, and what matters most? Motors and rocket are
// invented.
//   dotnet run --project samples/ReliabilityStudy [-- DIR [CASES]]     (default: figures, 400 cases)
using System.Collections.Immutable;
using System.Globalization;
using ReliabilityStudy;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
using Staging.Core.Studies;
using UnitsNet;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
string folder = args.Length > 0 ? args[0] : "figures";
int cases = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 400;
Directory.CreateDirectory(folder);
StagingPlan plan = StagingPlan.Read(Path.Combine(AppContext.BaseDirectory, "demo", "plan.json"));

#region reliability-study
StudyInput<StagingPlan> structure = PlanInputs.OfStage(
    "sustainer", "sustainer.structure", "g", Spread.Normal(38, 1.5), (s, v) => s with { StructureMass = Mass.FromGrams(v) });

var study = new ReliabilityStudy<StagingPlan, StagedFlight>
{
    Inputs = InputSet.Of(plan, [.. GapInputs.Judged.Select(i => i.Below("sustainer")), structure]),
    Model = (p, stop) =>
    {
        FlightRun flight = p.Flight.Fly(new FlightOptions { Scope = FlightScope.UppermostStage, KeepTracks = false },
            cancellationToken: stop);
        return new StagedFlight(flight, flight.GapBelow("sustainer").Solve(cancellationToken: stop));
    },
    Outcome = s => s.Flight.Stagings[0].Lit ? "lit" : "unlit",
    Measures =
    [
        Measure.Of<StagedFlight>("lit after", "ms", s => (s.Flight.Stagings[0].Ignition - s.Flight.Stagings[0].State.Time)?.Milliseconds),
        Measure.Of<StagedFlight>("margin", "K", s => s.Margin_K),
        Measure.Of<StagedFlight>("apogee", "m", s => s.Flight.Apogee?.Meters),
        Measure.Of<StagedFlight>("landing energy", "J",
            s => s.Flight.Main.Outcome is FlightOutcome.Landed landed ? landed.KineticEnergy.Joules : null),
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
MeasureSummary margins = run.Measure("margin");
foreach (double percent in new double[] { 5, 25, 50, 75, 95 })
    Console.WriteLine(
        $"margin, {percent} % of the cases below: "
            + $"{margins.Percentile(percent).Value:F0} K ({margins.Percentile(percent).Interval.Low:F0} to {margins.Percentile(percent).Interval.High:F0} K at 95 %)");
foreach ((long number, string reason) in run.Refusals)
    Console.WriteLine($"case {number} was refused: {reason}");
using (StreamWriter csv = File.CreateText(Path.Combine(folder, "reliability-cases.csv")))
    run.Columns().WriteCsv(csv);

var sensitivity = new SensitivityStudy<GapProblem>
{
    Inputs = InputSet.Of(plan.GapBelow("sustainer"), GapInputs.Judged),
    Unit = "K",
    Model = (p, stop) => StagedFlight.MarginOf(p.Solve(cancellationToken: stop)),
};
ImmutableArray<MorrisEffect> effects = [.. sensitivity.Screen(paths: Math.Max(10, cases / 10)).OrderByDescending(e => e.MeanAbsolute)];
Console.WriteLine();
Console.WriteLine("what moves the margin of the grain surface over ignition:");
foreach (MorrisEffect effect in effects)
    Console.WriteLine($"  {effect.Input,-36} {effect.MeanAbsolute,5:F0} K over its range, acting with others or bending "
        + $"{effect.StandardDeviation,5:F0} K");

StudyFigures.Write(run, effects, folder);
Console.WriteLine($"written to {folder}: reliability-cases.csv, reliability-apogee.svg, reliability-matters.svg");
