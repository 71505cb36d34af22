using GapStagedFlight;
using GapStagedFlight.Sheet;
using Staging.Core.Plans;
using Staging.Core.Reviews;

const int Lights = 0, StaysCold = 1, BadInput = 2;
try
{
    Arguments asked = Arguments.Parse(args);
    if (asked.Help)
    {
        Console.WriteLine(Arguments.Usage);
        return Lights;
    }

    StagingReview review = StagingPlan.Read(asked.Plan).Review();
    Console.WriteLine(review);
    if (asked.Figures is { } directory)
        Console.WriteLine($"\nfigures (SVG and PNG): {string.Join(", ", Figures.Write(review, directory))}");
    if (asked.Sheet is { } folder)
    {
        (IReadOnlyList<string> files, IReadOnlyList<string> notDrawn) = Sheets.Write(review, folder, asked.Paper);
        Console.WriteLine($"\nbuilder's sheets, to print at 100 %: {(files.Count == 0 ? "none, no holes" : string.Join(", ", files))}");
        foreach (string wall in notDrawn)
            Console.WriteLine($"not drawn: {wall}");
    }

    return review.EveryStageLights ? Lights : StaysCold;
}
catch (Exception e) when (e is ArgumentException or FormatException or IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine("error: " + OneLine(e));
    return BadInput;
}

static string OneLine(Exception e)
{
    string[] lines = [.. e.Message.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
    return lines.Length < 3 ? string.Join(' ', lines) : $"{lines[0]} {lines[1]} (and {lines.Length - 2} more)";
}
