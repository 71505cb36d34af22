using System.Globalization;
using System.Text;
using Staging.Core.Studies;

namespace Staging.Core.Fuzz.Formats;

/// <summary>A pressure trace as CSV.</summary>
internal static class TraceFormat
{
    public static bool Reads(string text)
    {
        if (!Attempt.Gives<MeasuredTrace, FormatException>(() => MeasuredTrace.ReadCsv(new StringReader(text)), Promise.Refused, out MeasuredTrace? trace))
            return false;
        Promise.Keep(trace.Equals(MeasuredTrace.ReadCsv(new StringReader(Written(trace)))), "a trace is read as it was");
        return true;
    }

    private static string Written(MeasuredTrace trace)
    {
        var text = new StringBuilder("time_s,").Append(trace.Name).Append('\n');
        for (int i = 0; i < trace.Times.Length; i++)
            text.Append(CultureInfo.InvariantCulture, $"{trace.Times[i]:R},{trace.Values[i]:R}\n");
        return text.ToString();
    }
}
