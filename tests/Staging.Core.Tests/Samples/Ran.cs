using System.Diagnostics;
using Staging.Core.Tests.Hygiene;

namespace Staging.Core.Tests.Samples;

/// <summary>A sample program that ran to its end, as a user would start it.</summary>
internal sealed record Ran(int Code, string Output, string Error)
{
    /// <summary>Folder of the build configuration these tests were built in; the samples are built in the same.</summary>
    private static readonly string Built = Path.Combine(
        "bin", Path.GetFileName(Path.GetDirectoryName(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar))!), "net10.0");

    public static string[] Lines(string text) => text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');

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
        Task<string> output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        Task<string> error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return new Ran(process.ExitCode, await output, await error);
    }
}
