using System.Diagnostics;
using System.Globalization;
using Staging.Core.Studies;

namespace Staging.Core.Benchmarks;

/// <summary>
/// A long study once on one thread and once on two: cases a second, and what stays in memory. Too long to repeat as a
/// benchmark, and long enough to need no repeating.
/// </summary>
internal static class StudyRate
{
    private const int WarmUpCases = 2_000;

    /// <summary>Runs a tenth of the cases and all of them, on one thread and on two, and prints a table.</summary>
    public static void Print(int cases)
    {
        Run(WarmUpCases, 1);
        Run(WarmUpCases, 2);
        Console.WriteLine("| cases | threads | time [s] | cases a second | over one thread | kept by the result [kB] | lit |");
        Console.WriteLine("|---|---|---|---|---|---|---|");
        foreach (int number in (int[])[cases / 10, cases])
        {
            double alone = 0;
            foreach (int threads in (int[])[1, 2])
            {
                (double seconds, long kept, Proportion lit) = Run(number, threads);
                alone = threads == 1 ? seconds : alone;
                Console.WriteLine(string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {number} | {threads} | {seconds:F2} | {number / seconds:F0} | {alone / seconds:F2} | {kept / 1024.0:F0} | {lit.Hits} of {lit.Cases} |"));
            }
        }
    }

    private static (double Seconds, long Kept, Proportion Lit) Run(int cases, int threads)
    {
        long before = GC.GetTotalMemory(forceFullCollection: true);
        var watch = Stopwatch.StartNew();
        ReliabilityRun run = StudyBenchmarks.Gaps(cases).Run(new StudyOptions { Threads = threads });
        double seconds = watch.Elapsed.TotalSeconds;
        long kept = GC.GetTotalMemory(forceFullCollection: true) - before;
        return (seconds, kept, run.Probability("Lit"));
    }
}
