namespace Staging.Core.Reviews;

/// <summary>Sources of the cautions and how each was obtained.</summary>
internal static class SafetyCodes
{
    public static Provenance ModelRocketCode(string clause) => new()
    {
        Source = "National model rocket safety code of the United States (public text)",
        Locator = clause,
        How = Evidence.SeenInSource,
    };

    public static Provenance Guidance(string what) => new()
    {
        Source = "Guidance of the trade, not a code: " + what,
        How = Evidence.FromMemory,
    };

    public static Provenance Practice(string what) => new()
    {
        Source = "Common practice of the trade: " + what,
        How = Evidence.CommonPractice,
    };

    /// <summary>Federal regulation on debris counted in casualty analysis: 11 ft lbf.</summary>
    public static Provenance DebrisEnergy { get; } = new()
    {
        Source = "14 CFR part 417, appendix A: debris of 11 ft lbf or more counts in casualty analysis",
        How = Evidence.SeenInSource,
    };
}
