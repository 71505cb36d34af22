using System.Diagnostics;
using Staging.Core.Campaign.Drawing;
using Staging.Core.Campaign.Oracle;
using Staging.Core.Campaign.Subjects;

namespace Staging.Core.Campaign;

/// <summary>One case, run twice.</summary>
/// <param name="Number">Its number in the campaign.</param>
/// <param name="Facts">What was found out.</param>
/// <param name="Seconds">How long its first run took.</param>
internal sealed record Trial(long Number, Facts Facts, double Seconds)
{
    /// <summary>Wall time of one run beyond which something is wrong on any machine [s].</summary>
    public const double FarBeyond = 20;

    public static Trial Of(ISubject subject, Func<Draws> draws, long number)
    {
        long begun = Stopwatch.GetTimestamp();
        Facts first = Judged(subject, draws());
        double seconds = Stopwatch.GetElapsedTime(begun).TotalSeconds;
        if (seconds > FarBeyond)
            first.Break("slow", $"took {seconds:F0} s");
        if (first.Ending != Ending.Refused && Judged(subject, draws()).Digest != first.Digest)
            first.Break("second run differs", "two runs of one case differ in a bit");
        return new Trial(number, first, seconds);
    }

    private static Facts Judged(ISubject subject, Draws draws)
    {
        var facts = new Facts();
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
            string at = e.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("Staging.Core.", StringComparison.Ordinal) && !l.Contains("Guard.", StringComparison.Ordinal))?.Trim() ?? "";
            facts.Break($"exception {e.GetType().Name}", $"{e.Message.ReplaceLineEndings(" ")} {at}");
        }

        return facts;
    }

    private static string Codes(InvalidModelException e) =>
        string.Join(' ', e.Findings.Where(f => f.Severity == FindingSeverity.Error).Select(f => f.Code).Distinct().Order(StringComparer.Ordinal));
}
