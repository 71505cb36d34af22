namespace Staging.Core.Fuzz.Formats;

/// <summary>What holds for every text. A promise that is broken is an exception that no reader may throw.</summary>
internal static class Promise
{
    public static void Keep(bool kept, string promise)
    {
        if (!kept)
            throw new InvalidOperationException("Broken: " + promise);
    }

    /// <summary>A message says something, and is short, however long the text: excerpts keep it so.</summary>
    public static void Told(string message, int longest = 250) =>
        Keep(message.Length > 0 && message.Length <= longest, $"a message has 1 to {longest} characters, not {message.Length}");

    /// <summary>The same of a refusal.</summary>
    public static void Refused(FormatException refusal) => Told(refusal.Message);

    /// <summary>What was written is the same when it is read and written again.</summary>
    public static void SameText(string written, string again) => Keep(written == again, "what is written is read as it was");
}
