#:project ../src/Staging.Core/Staging.Core.csproj
#:property PublishAot=false
// A script for a researcher: fit the source to a gauge trace of the gap, and see whether the intervals can be believed.
//   dotnet run samples/CalibrateTrace.cs [-- trace.csv | -- SEEDS]     (default: 25 synthetic traces)
// trace.csv has the head time_s,gauge_Pa. Without one, traces are made from planted values with the noise of an invented gauge.
using System.Collections.Immutable;
using System.Globalization;
using Staging.Core;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Reviews;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
const double plantedMass_g = 0.21, plantedBurn_ms = 22, noise_Pa = 1500;
SolverOptions solver = new() { RelativeTolerance = 1e-7, ScaledAbsoluteTolerance = 1e-9 };
GapProblem start = StartingGaps.Bore18mm; // invented
var holes = new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
GapProblem bench = start with
{
    Design = start.Design with { Vents = [Vent.BelowNozzle(start.Design.Tube, holes, Length.FromMillimeters(1))] },
    Horizon = Duration.FromMilliseconds(30),
};

#region calibrate
InputSet<GapProblem> unknown = InputSet.Of(
    bench, GapInputs.FragmentMass(Spread.Uniform(0.05, 0.4)), GapInputs.FragmentBurnTime(Spread.Uniform(10, 45)));

CalibrationResult<GapProblem> Fit(MeasuredTrace trace) =>
    Calibration.Fit(unknown, trace, (p, times, stop) => Gauge(p, times, stop), new CalibrationOptions { Threads = 1 });

ImmutableArray<double> Gauge(GapProblem problem, ImmutableArray<double> times, CancellationToken stop)
{
    GapRun run = problem.Solve(options: solver, cancellationToken: stop);
    double outside = problem.Surroundings.Pressure.Pascals;
    return [.. times.Select(t => t <= run.End.Seconds ? run.At(Duration.FromSeconds(t)).GapPressure.Pascals - outside : 0)];
}
#endregion

if (args.Length > 0 && File.Exists(args[0]))
{
    using StreamReader file = File.OpenText(args[0]);
    Tell(Fit(MeasuredTrace.ReadCsv(file)));
    return 0;
}

int seeds = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 25;
ImmutableArray<double> times = [.. Enumerable.Range(1, 50).Select(i => 5e-4 * i)];
ImmutableArray<double> truth = Gauge(unknown.At([plantedMass_g, plantedBurn_ms]), times, default);
MeasuredTrace Noisy(ulong seed) => MeasuredTrace.Of("gauge_Pa", times, [.. truth.Select((p, i) => p + noise_Pa * new CaseDraws(seed, (ulong)i).Normal(0))]);

Console.WriteLine($"planted {plantedMass_g} g and {plantedBurn_ms} ms, noise {noise_Pa} Pa on a peak of {truth.Max():F0} Pa; the first fit:");
Tell(Fit(Noisy(1)));
SweepLine<CalibrationResult<GapProblem>> fits = Sweep.Along(Axis.Even("seed", "-", 1, seeds, seeds), (seed, _) => Fit(Noisy((ulong)Math.Round(seed))));
int mass = fits.Results.Count(f => f.Inputs[0].Interval.Holds(plantedMass_g)), burn = fits.Results.Count(f => f.Inputs[1].Interval.Holds(plantedBurn_ms));
Console.WriteLine($"95 % intervals that hold the planted value: fragment mass {new Proportion(mass, seeds)}, burn time {new Proportion(burn, seeds)}");
// Too few only if so few, or fewer, were rarer than 1.25 % by the exact binomial: of 100, that asks for 90.
bool asStated = new[] { mass, burn }.All(hits => new Proportion(hits, seeds).ClopperPearson(0.975).High >= 0.95);
Console.WriteLine(asStated ? "coverage as stated" : "the intervals are too narrow");
return asStated ? 0 : 1;

static void Tell(CalibrationResult<GapProblem> fit)
{
    foreach (FittedInput input in fit.Inputs)
        Console.WriteLine($"  {input}; {input.Interval}");
    Console.WriteLine($"  correlation {fit.Correlation[1]:F2}, residuals {fit.ResidualStandardDeviation:F0} Pa");
    foreach (ModelFinding doubt in fit.Findings)
        Console.WriteLine($"  {doubt}");
}
