using System.Diagnostics;
using Staging.Core.Campaign.Drawing;
using Staging.Core.Campaign.Oracle;
using Staging.Core.Campaign.Subjects;

namespace Staging.Core.Campaign;

/// <summary>One case.</summary>
/// <param name="Number">Its number in the campaign.</param>
/// <param name="Facts">What was found out.</param>
/// <param name="Seconds">How long its first run took: the lesser of wall and processor time, as a busy machine would lengthen it.</param>
internal sealed record Trial(long Number, Facts Facts, double Seconds)
{
    /// <summary>The fault of a case whose second run has another digest.</summary>
    public const string Differs = "second run differs";

    /// <summary>Runs a case.</summary>
    /// <param name="subject">Its kind.</param>
    /// <param name="draws">Its values, anew for each run.</param>
    /// <param name="number">Its number.</param>
    /// <param name="twice">Whether it runs a second time, to be compared with the first.</param>
    /// <param name="thorough">Whether results are asked for what they compute on demand.</param>
    /// <returns>What was found out.</returns>
    public static Trial Of(ISubject subject, Func<Draws> draws, long number, bool twice = true, bool thorough = true)
    {
        long begun = Stopwatch.GetTimestamp();
        TimeSpan worked = Environment.CpuUsage.TotalTime;
        Facts first = Judged(subject, draws(), thorough);
        double seconds = Math.Min(Stopwatch.GetElapsedTime(begun).TotalSeconds, (Environment.CpuUsage.TotalTime - worked).TotalSeconds);
        if (twice && first.Ending != Ending.Refused && Judged(subject, draws(), thorough).Digest != first.Digest)
            first.Break(Differs, "two runs of one case differ in a bit");
        return new Trial(number, first, seconds);
    }

    private static Facts Judged(ISubject subject, Draws draws, bool thorough)
    {
        var facts = new Facts { Thorough = thorough };
        Action<Facts> run;
        try
        {
            run = subject.Make(draws);
        }
        catch (ArgumentException e)
        {
            facts.Refusal = e is InvalidModelException refused ? Codes(refused) : $"range of {e.ParamName}";
            return facts;
        }

        try
        {
            run(facts);
        }
        catch (InvalidModelException e)
        {
            facts.Refusal = Codes(e);
            facts.Text("refusal", e.Message);
        }
        catch (Exception e)
        {
            facts.Break($"exception {e.GetType().Name}", $"{e.Message.ReplaceLineEndings(" ")} {Place(e)}");
        }

        return facts;
    }

    /// <summary>The first place in the library, past the guards.</summary>
    private static string Place(Exception e) => e.StackTrace?.Split('\n').FirstOrDefault(line =>
        line.Contains("Staging.Core.", StringComparison.Ordinal) && !line.Contains("Guard.", StringComparison.Ordinal))?.Trim() ?? "";

    private static string Codes(InvalidModelException e) => string.Join(' ', e.Findings
        .Where(f => f.Severity == FindingSeverity.Error).Select(f => f.Code).Distinct().Order(StringComparer.Ordinal));
}
