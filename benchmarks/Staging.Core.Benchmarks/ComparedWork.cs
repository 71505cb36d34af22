using System.Diagnostics;
using System.Globalization;
using System.Runtime.Intrinsics;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Validation;
using UnitsNet;

namespace Staging.Core.Benchmarks;

/// <summary>
/// The library's side of a comparison: each problem timed in this process, one line of JSON each, as
/// <see cref="Comparison"/> reads it from any program.
/// </summary>
internal static class ComparedWork
{
    /// <summary>
    /// Times of work before any is counted [s], each with a pause behind it: the runtime compiles in tiers, beside the
    /// work and on the same core.
    /// </summary>
    private const double WarmUp = 0.7;

    private const int WarmUps = 8;
    private const int PauseMilliseconds = 300;

    private const int Repeats = 11;
    private const double LongEnough = 0.1;

    /// <summary>Times every problem.</summary>
    public static void Print()
    {
        var plan = FlightTwoStage.Plan();
        foreach (double tolerance in (double[])[1e-8, 5e-7])
        {
            FlightOptions options = FlightTwoStage.Lean(tolerance);
            Line("T", $"Staging.Core, plan in, run out, tolerance {Text(tolerance)}", Micro(() => plan.Fly(options)), plan.Fly(options).Statistics.DerivativeCalls);
        }

        TwoVesselGap vessels = TwoVesselGap.Timed();
        vessels.Run();
        int evaluations = vessels.Statistics.DerivativeCalls;
        Line("G", "Staging.Core, its integrators", Micro(vessels.Run), evaluations);
        GapProblem gap = StartingGaps.Bore18mm.WithVents(new VentLayout { HoleCount = 4 }, Area.FromSquareMillimeters(30));
        foreach ((string name, SolverOptions options) in (ReadOnlySpan<(string, SolverOptions)>)
            [("a case of a study", SolverOptions.ForStudies), ("a single run", SolverOptions.ForGaps)])
            Line("a whole gap", $"Staging.Core, problem in, run out, {name}", Micro(() => gap.Solve(options: options)),
                gap.Solve(options: options).Statistics.DerivativeCalls);

        int widest = Vector512.IsHardwareAccelerated ? 8 : Vector256.IsHardwareAccelerated ? 4 : 1;
        foreach (int lanes in (int[])[8, 4, 1])
        {
            if (lanes <= widest)
                Tube(lanes == 1 ? "Staging.Core, one lane" : $"Staging.Core, {lanes} lanes", new ShockTubeRun(lanes, twoGases: false));
        }

        Tube("Staging.Core, two gases", new ShockTubeRun(0, twoGases: true));
    }

    private static void Tube(string name, ShockTubeRun tube)
    {
        tube.Run();
        double cellSteps = tube.CellSteps;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $$"""{"problem":"E","peer":"{{name}}","ns_cellstep":{{Micro(() => tube.Run()) * 1e3 / cellSteps:F3}}}"""));
    }

    private static void Line(string problem, string name, double microseconds, int evaluations) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $$"""{"problem":"{{problem}}","peer":"{{name}}","us_nominal":{{microseconds:F4}},"nf":{{evaluations}}}"""));

    /// <summary>Median time of one call [us].</summary>
    private static double Micro(Action work)
    {
        var watch = new Stopwatch();
        long calls = 0;
        for (int i = 0; i < WarmUps; i++)
        {
            Thread.Sleep(PauseMilliseconds);
            watch.Restart();
            for (calls = 0; watch.Elapsed.TotalSeconds < WarmUp; calls++)
                work();
        }

        int each = (int)Math.Max(1, calls / WarmUp * LongEnough);
        double[] times = new double[Repeats];
        for (int r = 0; r < Repeats; r++)
        {
            watch.Restart();
            for (int i = 0; i < each; i++)
                work();
            times[r] = watch.Elapsed.TotalMicroseconds / each;
        }

        Array.Sort(times);
        return times[Repeats / 2];
    }

    private static string Text(double value) => value.ToString("0e-0", CultureInfo.InvariantCulture);
}
