namespace GapStagedFlight;

/// <summary>Whether what is asked for can be written: tried before anything is computed.</summary>
internal static class Targets
{
    /// <summary>Makes the directories and writes to each once.</summary>
    /// <exception cref="IOException">One cannot be written.</exception>
    public static void Try(Arguments asked)
    {
        Directory("--figures", asked.Figures);
        Directory("--sheet", asked.Sheet);
        Directory("--csv", asked.Csv);
        if (asked.Html is { } page)
            Tried("--html", page, () => File.OpenWrite(page).Dispose(), isNew: !File.Exists(page));
    }

    private static void Directory(string option, string? directory)
    {
        if (directory is null)
            return;
        string trial = Path.Combine(directory, Path.GetRandomFileName());
        Tried(option, directory, () =>
        {
            System.IO.Directory.CreateDirectory(directory);
            File.Create(trial).Dispose();
            File.Delete(trial);
        });
    }

    private static void Tried(string option, string path, Action write, bool isNew = false)
    {
        try
        {
            write();
            if (isNew)
                File.Delete(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new IOException($"{option} {path} cannot be written: {e.Message}", e);
        }
    }
}
