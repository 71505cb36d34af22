using GapStagedFlight;
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

    StagingReview review = PlanDocument.Read(asked.Plan).Review();
    ReviewText.Write(review, Console.Out);
    if (asked.Figures is { } directory)
        Figures.Write(review, directory, Console.Out);
    Console.WriteLine(ReviewText.Result(review));
    return review.EveryStageLights ? Lights : StaysCold;
}
catch (Exception e) when (e is ArgumentException or FormatException or IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine("error: " + e.Message.ReplaceLineEndings("; "));
    return BadInput;
}
