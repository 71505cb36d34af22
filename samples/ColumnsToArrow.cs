#:project ../src/Staging.Core.Arrow/Staging.Core.Arrow.csproj
#:property PublishAot=false
// A script for a researcher: the columns of a gap, of a flight and of three studies as Arrow files, each with its CSV beside.
//   dotnet run samples/ColumnsToArrow.cs [-- DIR]     (default: columns)
// What reads Arrow reads them: in Python, pyarrow.feather.read_table("columns/cases.arrow").to_pandas().
using System.Globalization;
using Staging.Core;
using Staging.Core.Arrow;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.GroundTests;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
string folder = args.Length > 0 ? args[0] : "columns";
string here = AppContext.GetData("EntryPointFileDirectoryPath") as string ?? "samples";
Directory.CreateDirectory(folder);
StagingPlan plan = StagingPlan.Read(Path.Combine(here, "GapStagedFlight", "demo", "plan.json")); // invented
GapProblem gap = plan.GapBelow("sustainer");

GapColumns course = gap.Solve().Sample(Duration.FromMicroseconds(100));
course.ToArrow().WriteArrow(In("gap.arrow"));
Table("gap.csv", [("Time", "s", course.Time_s), .. Enum.GetValues<GapChannel>().Select(c => ($"{c}", GapColumns.UnitOf(c), course[c]))]);

FlightColumns flight = plan.Flight.Fly().Bodies[0].Sample(Duration.FromMilliseconds(20));
flight.ToArrow().WriteArrow(In("flight.arrow"));
Table("flight.csv", [("Time", "s", flight.Time_s), .. Enum.GetValues<FlightChannel>().Select(c => ($"{c}", FlightColumns.UnitOf(c), flight[c]))]);

ReliabilityRun odds = new ReliabilityStudy<GapProblem, GapRun>
{
    Inputs = new(gap, GapInputs.Judged),
    Model = (problem, stop) => problem.Solve(options: SolverOptions.ForStudies, cancellationToken: stop),
    Outcome = run => run.Outcome.GetType().Name,
    Measures =
    [
        new("peak", "kPa", run => run.PeakGaugePressure.Kilopascals),
        new("lit time", "ms", run => run.TimeOf(GapEventKind.Lit)?.Milliseconds),
    ],
    Cases = 64,
    KeepCases = true,
}.Run();
odds.Columns().ToArrow().WriteArrow(In("cases.arrow"));
Csv("cases.csv", odds.Columns().WriteCsv);

var peak = new Measure<GapRun>("peak", "kPa", run => run.PeakGaugePressure.Kilopascals);
SweepLine<GapRun> line = Sweep.Along(
    Axis.Even("joint", "N", 10, 60, 6), (newtons, stop) => gap.With(breakaway: Force.FromNewtons(newtons)).Solve(cancellationToken: stop));
line.ToArrow(peak).WriteArrow(In("line.arrow"));
Csv("line.csv", writer => line.WriteCsv(writer, peak));

Posterior<EquatableArray<double>> learned = GroundTestSeries.Read(Path.Combine(here, "ground-tests", "ten-tests.json")).Learn(1000, runs: 100).Posterior;
learned.ToArrow().WriteArrow(In("learned.arrow"));
Table("learned.csv", [.. learned.Inputs.Select(i => (i.Input.Name, i.Input.Unit, learned.Values(i.Input.Name))), ("weight", "-", learned.Weights)]);

foreach (string file in Directory.EnumerateFiles(folder, "*.arrow").Order())
    Console.WriteLine($"written: {Path.GetFileName(file)}");
return 0;

string In(string name) => Path.Combine(folder, name);

void Csv(string name, Action<TextWriter> write)
{
    using StreamWriter writer = File.CreateText(In(name));
    write(writer);
}

void Table(string name, (string Name, string Unit, ReadOnlyMemory<double> Values)[] columns) => Csv(name, writer =>
{
    writer.WriteLine(string.Join(',', columns.Select(c => $"{c.Name} [{c.Unit}]")));
    for (int i = 0; i < columns[0].Values.Length; i++)
        writer.WriteLine(string.Join(',', columns.Select(c => $"{c.Values.Span[i]:R}")));
});
