using System.Globalization;
using Samples;
using Staging.Core.Flight;
using Staging.Core.Reviews;
using UnitsNet;

namespace GapStagedFlight.Figures;

/// <summary>What happened in the nominal case, in the few words of a title.</summary>
internal static class Titles
{
    private const int NameLength = 18;

    /// <summary>A stage's name, cut where it is long.</summary>
    public static string Name(string stage) => Figure.Short(stage, NameLength);

    /// <summary>A time in milliseconds; with motors in contact all is over within one.</summary>
    public static string Time(Duration time) =>
        time.Milliseconds.ToString(time.Milliseconds < 1 ? "F2" : "F1", CultureInfo.InvariantCulture) + " ms";

    public static string Gap(GapReview gap) => $"The gap below {Name(gap.Staging.UpperStage)}, nominal case: " + gap.Run.Outcome.Match(
        lit => $"lit after {Time(lit.Time)}",
        apart => $"pushed apart after {Time(apart.Time)}",
        _ => "the products leave through the vents",
        cool => FormattableString.Invariant($"too cool, {cool.PeakSurface.Kelvins:F0} K at the grain"),
        _ => "the front does not reach the vents",
        _ => "not solved");

    public static string Race(GapReview gap) => $"The race to light {Name(gap.Staging.UpperStage)}, nominal case: " + gap.Run.Outcome.Match(
        lit => lit.MarginToSeparation switch
        {
            { Seconds: < 0 } late => $"lit {Time(-late)} after the joint opened",
            { } margin => $"the grain wins by {Time(margin)}",
            null => "the grain is lit, the joint holds",
        },
        _ => "the joint opens first",
        _ => "stays cold, the products leave",
        _ => "stays cold, the grain too cool",
        _ => "stays cold, the front falls short",
        _ => "not solved");

    public static string Flight(StagingReview review)
    {
        FlightRun flight = review.Flight;
        if (flight.Main.Outcome is FlightOutcome.NeverLeftGuide)
            return "The flight, nominal case: the stack never leaves the guide";
        string apogee = flight.Apogee is { } height ? FormattableString.Invariant($"apogee {height.Meters:F0} m") : "no apogee";
        return $"The flight, nominal case: {Staging(review)}{apogee}";
    }

    private static string Staging(StagingReview review)
    {
        if (review.Stages.IsEmpty)
            return "";
        StageVerdict? cold = review.Stages.FirstOrDefault(s => !review.Flight.Stagings.Any(x => x.Lit && x.UpperStage == s.Stage));
        if (cold is not null)
            return $"{Name(cold.Stage)} stays cold, ";
        string assumed = review.Stages.All(s => s.IsAssumed) ? " (assumed)" : review.Stages.Any(s => s.IsAssumed) ? " (in part assumed)" : "";
        return review.Stages.Length == 1 ? $"{Name(review.Stages[0].Stage)} lit{assumed}, " : $"every stage lit{assumed}, ";
    }
}
