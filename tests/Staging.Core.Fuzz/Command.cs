using SharpFuzz;
using Staging.Core.Fuzz.Formats;

namespace Staging.Core.Fuzz;

/// <summary>Replays texts, or takes them from the fuzzer that started this program.</summary>
internal static class Command
{
    private const string Usage = """
        plan|thrust|trace|tests|parts [FILE...]
        With files: each has to be read or refused as the library says it will be. Without: for afl-fuzz, see the script "fuzz".
        """;

    private static readonly Dictionary<string, Func<string, bool>> Formats = new()
    {
        ["plan"] = PlanFormat.Reads,
        ["thrust"] = ThrustFormat.Reads,
        ["trace"] = TraceFormat.Reads,
        ["tests"] = GroundTestFormat.Reads,
        ["parts"] = PartFormat.Reads,
    };

    public static int Run(string[] words, TextWriter output)
    {
        if (words is not [string name, .. string[] files] || !Formats.TryGetValue(name, out Func<string, bool>? reads))
        {
            output.WriteLine(Usage);
            return 2;
        }

        if (files.Length > 0)
            return Replay(name, reads, files, output);
        Fuzzer.OutOfProcess.Run(stream => reads(Text(stream)));
        return 0;
    }

    private static int Replay(string name, Func<string, bool> reads, string[] files, TextWriter output)
    {
        int read = 0, failed = 0;
        foreach (string path in files)
        {
            try
            {
                read += reads(File.ReadAllText(path)) ? 1 : 0;
            }
            catch (Exception fault)
            {
                failed++;
                output.WriteLine($"{path}: {fault}");
            }
        }

        output.WriteLine($"{name}: {files.Length} texts, {read} read, {files.Length - read - failed} refused, {failed} failed");
        return failed > 0 ? 1 : 0;
    }

    /// <summary>Bytes that are not UTF-8 become the replacement character: texts are what is tried, not decoders.</summary>
    private static string Text(Stream stream)
    {
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
