using System.Diagnostics;
using System.Globalization;
using System.Runtime.Intrinsics;
using System.Text.Json;

namespace Staging.Core.Benchmarks;

/// <summary>
/// This library beside other programs for the same work: all take turns on one core, several rounds, and one table
/// gives the medians and their ratios.
/// </summary>
/// <remarks>
/// A program prints one line of JSON for each thing it timed: <c>problem</c>, <c>peer</c> (its name), and the time as
/// <c>us_nominal</c> [us a run] or <c>ns_cellstep</c> [ns a cell and step]; <c>nf</c> is the number of evaluations of
/// its right-hand side in a run. Other lines, and other fields, are passed over.
/// </remarks>
internal static class Comparison
{
    private const int Rounds = 3;
    private const string Own = "Staging.Core";

    /// <summary>Runs the commands of a file, one a line, in turns with this program, and prints the table.</summary>
    public static void Print(string file)
    {
        string[] commands = [.. File.ReadAllLines(file).Select(line => line.Trim()).Where(line => line.Length > 0 && line[0] != '#')];
        string[][] all = [[Environment.ProcessPath!, "alone"], .. commands.Select(command => command.Split(' ', StringSplitOptions.RemoveEmptyEntries))];
        var times = new Dictionary<(string Problem, string Peer), List<Timing>>();
        for (int round = 0; round < Rounds; round++)
        {
            foreach (string[] command in all)
            {
                foreach ((string problem, Timing timing) in Run(command))
                {
                    if (!times.TryGetValue((problem, timing.Peer), out List<Timing>? of))
                        times.Add((problem, timing.Peer), of = []);
                    of.Add(timing);
                }
            }

            Console.Error.WriteLine($"round {round + 1} of {Rounds}");
        }

        int width = Vector512.IsHardwareAccelerated ? 512 : Vector256.IsHardwareAccelerated ? 256 : 128;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{DateTime.UtcNow:yyyy-MM-dd HH:mm} UTC, {width} bit registers, {Environment.ProcessorCount} cores, one of them used; medians of {Rounds} rounds."));
        foreach (IGrouping<string, KeyValuePair<(string Problem, string Peer), List<Timing>>> group in times.GroupBy(t => t.Key.Problem).OrderBy(g => g.Key, StringComparer.Ordinal))
            Table(group.Key, [.. group.Select(t => Summary.Of(t.Value))]);
    }

    private static void Table(string problem, Summary[] rows)
    {
        Summary[] others = [.. rows.Where(row => !row.Peer.StartsWith(Own, StringComparison.Ordinal))];
        double best = others.Length > 0 ? others.Min(row => row.Median) : double.NaN;
        string unit = rows[0].IsCellStep ? "ns a cell-step" : "us a run";
        Console.WriteLine();
        Console.WriteLine($"| {problem} | {unit} | least to greatest | ns an evaluation | over the fastest other program |");
        Console.WriteLine("|---|---|---|---|---|");
        foreach (Summary row in rows.OrderBy(row => row.Median))
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {row.Peer} | {row.Median:G4} | {row.Least:G4} to {row.Greatest:G4} | {(row.Evaluations > 0 ? (1e3 * row.Median / row.Evaluations).ToString("F0", CultureInfo.InvariantCulture) : "-")} | {(double.IsNaN(best) ? "-" : (row.Median / best).ToString("F2", CultureInfo.InvariantCulture))} |"));
        }
    }

    private static List<(string Problem, Timing Timing)> Run(string[] command)
    {
        bool pinned = OperatingSystem.IsLinux();
        string[] words = pinned ? ["taskset", "-c", "0", .. command] : command;
        using Process process = Process.Start(new ProcessStartInfo(words[0], words[1..]) { RedirectStandardOutput = true })
            ?? throw new InvalidOperationException($"{command[0]} does not start.");
        List<(string, Timing)> found = [];
        while (process.StandardOutput.ReadLine() is { } line)
        {
            if (line.StartsWith('{'))
                found.AddRange(Read(line));
        }

        process.WaitForExit();
        return process.ExitCode == 0 && found.Count > 0
            ? found
            : throw new InvalidOperationException($"{string.Join(' ', command)} ends with {process.ExitCode} and {found.Count} times.");
    }

    private static IEnumerable<(string Problem, Timing Timing)> Read(string line)
    {
        using JsonDocument document = JsonDocument.Parse(line);
        JsonElement root = document.RootElement;
        bool isCellStep = root.TryGetProperty("ns_cellstep", out JsonElement time);
        if (!isCellStep && !root.TryGetProperty("us_nominal", out time))
            yield break;
        double evaluations = root.TryGetProperty("nf", out JsonElement nf) ? nf.GetDouble() : 0;
        yield return (root.GetProperty("problem").GetString()!, new Timing(root.GetProperty("peer").GetString()!, time.GetDouble(), evaluations, isCellStep));
    }

    private sealed record Timing(string Peer, double Time, double Evaluations, bool IsCellStep);

    private sealed record Summary(string Peer, double Median, double Least, double Greatest, double Evaluations, bool IsCellStep)
    {
        public static Summary Of(List<Timing> timings)
        {
            double[] sorted = [.. timings.Select(timing => timing.Time).Order()];
            return new(timings[0].Peer, sorted[sorted.Length / 2], sorted[0], sorted[^1], timings[0].Evaluations, timings[0].IsCellStep);
        }
    }
}
