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

    /// <summary>Code for high power rocketry.</summary>
    public static Provenance HighPowerCode { get; } = new()
    {
        Source = "NFPA 1127, Code for High Power Rocketry: more than 160 N s, 80 N average thrust or 62.5 g of propellant in one motor; "
            + "launch angle up to 20 degrees from vertical",
        How = Evidence.FromMemory,
    };

    /// <summary>Federal regulation on classes of amateur rockets.</summary>
    public static Provenance AmateurClasses { get; } = new()
    {
        Source = "14 CFR 101.22: class 1 up to 125 g of propellant and 1500 g, class 2 up to 40960 N s",
        How = Evidence.SeenInSource,
    };

    /// <summary>Federal regulation on debris counted in casualty analysis: 11 ft lbf.</summary>
    public static Provenance DebrisEnergy { get; } = new()
    {
        Source = "14 CFR part 417, appendix A: debris of 11 ft lbf or more counts in casualty analysis",
        How = Evidence.SeenInSource,
    };
}
