using Staging.Core.GroundTests;
using Staging.Core.Plans;

namespace Staging.Core.Fuzz.Formats;

/// <summary>Records of tests on the ground as JSON, with a pressure trace beside them.</summary>
internal static class GroundTestFormat
{
    public static bool Reads(string text)
    {
        if (!Attempt.Gives<GroundTestSeries, PlanFormatException>(() => GroundTestSeries.Parse(text, Beside), Refusal.Check, out GroundTestSeries? series))
            return false;
        foreach (ModelFinding finding in series.Check())
            Promise.Told(finding.Message, Refusal.LongestMessage);
        Promise.Keep(series == GroundTestSeries.Parse(series.ToJson()), "a series is read as it was");
        return true;
    }

    private static StringReader Beside(string name) => name.EndsWith(".csv", StringComparison.Ordinal)
        ? new StringReader("time_s,gauge_Pa\n0,0\n0.01,8000\n0.05,2000\n")
        : throw new FileNotFoundException();
}
