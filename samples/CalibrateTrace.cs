#:project ../src/Staging.Core/Staging.Core.csproj
#:property PublishAot=false
// A script for a researcher: fit the source to a gauge trace of the gap, and see whether the intervals can be believed.
//   dotnet run samples/CalibrateTrace.cs [-- trace.csv | -- SEEDS]     (default: 25 synthetic traces)
// trace.csv has the head time_s,gauge_Pa. Without one, traces are made from planted values with the noise of an
// invented gauge.
using System.Collections.Immutable;
using System.Globalization;
using Staging.Core;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
const double plantedMass_g = 0.21, plantedBurn_ms = 22, plantedWall = 250, noise_Pa = 1500;
SolverOptions solver = new() { RelativeTolerance = 1e-7, ScaledAbsoluteTolerance = 1e-9 };
GapProblem start = StartingGaps.Bore18mm; // invented
var pulse = new GapSource.Booster // invented: what a gauge can tell of a motor, without its grain
{
    Products = BlackPowderProducts.Nominal,
    FlameTemperature = BlackPowderProducts.NominalTemperature,
    ChamberVolume = Volume.FromCubicCentimeters(6.2),
    ChamberPressure = Pressure.FromKilopascals(800),
    OpeningDiameter = Length.FromMillimeters(10),
    OpeningTime = Duration.FromMilliseconds(1),
    OpeningCoefficient = 0.8,
    NozzleThroatDiameter = Length.FromMillimeters(3.5),
    Web = new WebBurn.OverTime { Mass = Mass.FromGrams(0.19), Time = Duration.FromMilliseconds(25) },
    Provenance = new Provenance { Source = "Invented; mass, pressure and time stated", How = Evidence.Invented },
};
var holes = new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
GapProblem bench = start with
{
    Design = start.Design with { Source = pulse, Vents = [Vent.BelowNozzle(start.Design.Tube, holes, Length.FromMillimeters(1))] },
    Horizon = Duration.FromMilliseconds(30),
};

#region calibrate
InputSet<GapProblem> unknown = new(
    bench, GapInputs.FragmentMass(Distribution.Uniform(0.05, 0.4)), GapInputs.FragmentBurnTime(Distribution.Uniform(10, 45)));

CalibrationResult<GapProblem> Fit(InputSet<GapProblem> inputs, MeasuredTrace trace) =>
    inputs.Fit(trace, (p, times, stop) => Gauge(p, times, stop), new CalibrationOptions { Threads = 1 });

ImmutableArray<double> Gauge(GapProblem problem, ImmutableArray<double> times, CancellationToken stop)
{
    GapRun run = problem.Solve(options: solver, cancellationToken: stop);
    double outside = problem.Surroundings.Pressure.Pascals;
    return [.. times.Select(t => t <= run.End.Seconds ? run.At(Duration.FromSeconds(t)).GapPressure.Pascals - outside : 0)];
}
#endregion

int seeds = 25;
if (args.Length > 1 || (args.Length == 1 && !File.Exists(args[0]) && (!int.TryParse(args[0], out seeds) || seeds is < 2 or > 1000)))
    return Refuse($"\"{string.Join(' ', args)}\" is neither a file nor a number of seeds, 2 to 1000");
if (args.Length == 1 && File.Exists(args[0]))
{
    try
    {
        using StreamReader file = File.OpenText(args[0]);
        Tell(Fit(unknown, MeasuredTrace.ReadCsv(file)));
        return 0;
    }
    catch (Exception fault) when (fault is FormatException or ArgumentException or IOException or UnauthorizedAccessException)
    {
        return Refuse($"{args[0]}: {fault.Message}");
    }
}

ImmutableArray<double> times = [.. Enumerable.Range(1, 50).Select(i => 5e-4 * i)];
MeasuredTrace Noisy(GapProblem planted, ulong seed) =>
    MeasuredTrace.Of("gauge_Pa", times,
        [.. Gauge(planted, times, default).Select((p, i) => p + noise_Pa * new CaseDraws(seed, (ulong)i).Normal(0))]);
GapProblem planted = unknown.At([plantedMass_g, plantedBurn_ms]);

Console.WriteLine($"planted {plantedMass_g} g and {plantedBurn_ms} ms, noise {noise_Pa} Pa on a peak of "
    + $"{Gauge(planted, times, default).Max():F0} Pa; the first fit:");
Tell(Fit(unknown, Noisy(planted, 1)));

#region calibrate-loss
InputSet<GapProblem> withLoss = new(bench, [.. unknown.Inputs, GapInputs.WallHeatTransfer(Distribution.Uniform(20, 800))]);
CalibrationResult<GapProblem> loss = Fit(withLoss, Noisy(withLoss.At([plantedMass_g, plantedBurn_ms, plantedWall]), 1));
#endregion
Console.WriteLine($"a loss beside the source: planted also {plantedWall} W/(m2 K) of wall heat transfer:");
Tell(loss);
SweepLine<CalibrationResult<GapProblem>> fits = Sweep.Along(Axis.Even("seed", "-", 1, seeds, seeds),
    (seed, _) => Fit(unknown, Noisy(planted, (ulong)Math.Round(seed))));
int mass = fits.Results.Count(f => f.Inputs[0].Interval.Holds(plantedMass_g)),
    burn = fits.Results.Count(f => f.Inputs[1].Interval.Holds(plantedBurn_ms));
Console.WriteLine(
    $"95 % intervals that hold the planted value: fragment mass {new Proportion(mass, seeds)}, burn time {new Proportion(burn, seeds)}");
// Too few only if so few, or fewer, were rarer than 1.25 % by the exact binomial: of 100, that asks for 90.
bool asStated = new[] { mass, burn }.All(hits => new Proportion(hits, seeds).ClopperPearson(0.975).High >= 0.95);
Console.WriteLine(asStated ? "coverage as stated" : "the intervals are too narrow");
// Three standard errors: passed by chance once in 370 for each of the three.
bool lossFound = new[] { plantedMass_g, plantedBurn_ms,
    plantedWall }.Select((v, i) => Math.Abs(loss.Inputs[i].Value - v) / loss.Inputs[i].StandardError).All(z => z < 3);
Console.WriteLine(lossFound ? "source and loss come back together" : "the planted loss does not come back");
return asStated && lossFound ? 0 : 1;

static int Refuse(string what)
{
    Console.Error.WriteLine(what);
    return 2;
}

static void Tell(CalibrationResult<GapProblem> fit)
{
    foreach (FittedInput input in fit.Inputs)
        Console.WriteLine($"  {input}; {input.Interval}");
    int k = fit.Inputs.Length;
    for (int i = 0; i < k; i++)
    {
        for (int j = i + 1; j < k; j++)
            Console.WriteLine(
                $"  correlation of {fit.Inputs[i].Input.Name} and {fit.Inputs[j].Input.Name}: {fit.Correlation[i * k + j]:F2}");
    }

    Console.WriteLine($"  residuals {fit.ResidualStandardDeviation:F0} Pa");
    foreach (ModelFinding doubt in fit.Findings)
        Console.WriteLine($"  {doubt}");
}
