namespace Staging.Core.Tests.Hygiene;

/// <summary>How a rule reports: every offender on its own line, all of them at once.</summary>
internal static class Violations
{
    public static void None(IEnumerable<string> found)
    {
        string[] all = [.. found.Distinct()];
        Assert.True(all.Length == 0, $"{all.Length} violations:\n{string.Join('\n', all)}");
    }
}
