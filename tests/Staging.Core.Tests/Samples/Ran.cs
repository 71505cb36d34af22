using System.Diagnostics;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Samples;

/// <summary>What a sample program returned and printed.</summary>
internal sealed record Ran(int Code, string Output, string Error)
{
    /// <summary>Folder of the build configuration these tests were built in; the samples are built in the same.</summary>
    private static readonly string Built = Path.Combine(
        "bin", Path.GetFileName(Path.GetDirectoryName(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar))!), "net10.0");

    public static string[] Lines(string text) => text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');

    /// <summary>The command of the main sample, called and not started.</summary>
    public static Ran Command(params string[] arguments)
    {
        using StringWriter output = new(), error = new();
        int code = GapStagedFlight.Command.Run(arguments, output, error);
        return new Ran(code, output.ToString(), error.ToString());
    }

    public static async Task<Ran> Sample(string name, string folder, params string[] arguments)
    {
        string program = Path.Combine(Repository.Root, "samples", name, Built, name + ".dll");
        var start = new ProcessStartInfo("dotnet", [program, .. arguments])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using Process process = Process.Start(start)!;
        CancellationToken cancel = TestContext.Current.CancellationToken;
        string[] said = await Task.WhenAll(process.StandardOutput.ReadToEndAsync(cancel), process.StandardError.ReadToEndAsync(cancel)).ConfigureAwait(false);
        await process.WaitForExitAsync(cancel).ConfigureAwait(false);
        return new Ran(process.ExitCode, said[0], said[1]);
    }
}
