using System.Globalization;
using System.Text;
using Staging.Core.Flight;

namespace Staging.Core.Fuzz.Formats;

/// <summary>A thrust history as CSV.</summary>
internal static class ThrustFormat
{
    public static bool Reads(string text)
    {
        if (!Attempt.Gives<ThrustHistory, FormatException>(() => ThrustHistory.FromCsv(new StringReader(text)), Promise.Refused, out ThrustHistory? thrust))
            return false;
        Promise.Keep(thrust.Equals(ThrustHistory.FromCsv(new StringReader(Written(thrust)))), "a thrust history is read as it was");
        Promise.Keep(double.IsFinite(thrust.AverageThrust.Newtons) && double.IsFinite(thrust.TotalImpulse.NewtonSeconds), "sums are finite");
        return true;
    }

    private static string Written(ThrustHistory thrust)
    {
        var text = new StringBuilder("time_s,thrust_N\n");
        for (int i = 0; i < thrust.Time_s.Length; i++)
            text.Append(CultureInfo.InvariantCulture, $"{thrust.Time_s.Span[i]:R},{thrust.Thrust_N.Span[i]:R}\n");
        return text.ToString();
    }
}
