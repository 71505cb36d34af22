using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Plans;

namespace Staging.Core.Reviews;

/// <summary>The rules behind the cautions, one method a subject. Each quotes the rule it rests on.</summary>
internal static class CautionRules
{
    public static ImmutableArray<Caution> For(StagingPlan plan, FlightRun flight, ImmutableArray<GapReview> gaps) =>
    [
        Authority(),
        .. LaunchCautions.For(plan, flight),
        .. StagingCautions.For(plan, flight, gaps),
        .. DescentCautions.For(plan, flight),
    ];

    private static Caution Authority() => new(
        code: "CAU001",
        subject: "who decides",
        outsideRule: false,
        text: "This review informs. Local codes, the range safety officer and licensed practice decide whether and how to fly. Test "
            + "gaps on the ground, behind cover, before flight.",
        rule: new Provenance { Source = "Common practice of the trade", How = Evidence.CommonPractice });
}
