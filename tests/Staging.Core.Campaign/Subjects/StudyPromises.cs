using System.Globalization;
using Staging.Core.Campaign.Oracle;
using Staging.Core.Studies;

namespace Staging.Core.Campaign.Subjects;

/// <summary>What every study has to keep: parts that were written, read and merged in any order are the whole to the last bit.</summary>
internal static class StudyPromises
{
    public static void Odds<T, TResult>(ReliabilityStudy<T, TResult> study, int parts, Facts facts)
    {
        ReliabilityRun whole = study.Run(new StudyOptions { Threads = 1 });
        facts.Steps += whole.Cases;
        facts.Answer = "odds";
        facts.Read("odds", whole);
        facts.Within("cases counted", "cases", whole.Cases, study.Cases, study.Cases);
        foreach ((string outcome, long _) in whole.Outcomes)
            facts.Within("share of cases", outcome, whole.Probability(outcome).Estimate, 0, 1);
        ReliabilityRun[] read = [.. Parts(parts).Select(p =>
            Read(Text(study.Run(new StudyOptions { Threads = 2, Part = p }).Write), ReliabilityRun.Read))];
        Same(Text(whole.Write), Text(ReliabilityRun.Merge([.. read]).Write), facts);
    }

    public static void InParts<T>(PartitionedStudy<T> study, int parts, Facts facts)
    {
        PartResult whole = study.Run(new StudyOptions { Threads = 1 });
        PartResult[] read = [.. Parts(parts).Select(p =>
            Read(Text(study.Run(new StudyOptions { Threads = 2, Part = p }).Write), PartResult.Read))];
        PartResult merged = PartResult.Merge([.. read]);
        Same(Text(whole.Write), Text(merged.Write), facts);
        facts.Read("answer", study.Of(merged));
    }

    /// <summary>All parts, the last first.</summary>
    private static IEnumerable<StudyPart> Parts(int parts) => Enumerable.Range(0, parts).Select(k => new StudyPart(parts - k, parts));

    private static string Text(Action<TextWriter> write)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        write(text);
        return text.ToString();
    }

    private static T Read<T>(string text, Func<TextReader, T> read)
    {
        using var reader = new StringReader(text);
        return read(reader);
    }

    private static void Same(string whole, string merged, Facts facts)
    {
        if (whole != merged)
            facts.Break("parts differ from the whole", "the text of the merged parts is not that of the whole");
    }
}
