using System.Text.Json;
using Staging.Core.Campaign.Drawing;
using Staging.Core.Campaign.Oracle;
using Staging.Core.Plans;
using Staging.Core.Reviews;

namespace Staging.Core.Campaign.Subjects;

/// <summary>One plan: written, read again, reviewed as text and JSON, a few with odds.</summary>
internal sealed class PlanSubject : ISubject
{
    private const int FewCases = 4;

    public string Name => "plans";

    public string Steps => "steps of the solver in the flight and in the gaps as drawn; sizing, brackets and changes come on top";

    public Action<Facts> Make(Draws draws)
    {
        StagingPlan plan = PlanDraws.Plan(draws);
        int cases = draws.Choice("odds", 6) == 1 ? FewCases : 0;
        return facts => Review(plan, cases, facts);
    }

    private static void Review(StagingPlan plan, int cases, Facts facts)
    {
        string written = plan.ToJson();
        if (StagingPlan.Parse(written) != plan)
            facts.Break("plan read differs", "a plan that was written is read as another");
        if (StagingPlan.Parse(plan.ToJson(PlanForm.Brief)) != plan)
            facts.Break("plan read differs", "a plan that was written in brief is read as another");
        StagingReview review = plan.Review(cases: cases);
        FlightPromises.Keep(review.Flight, facts);
        foreach (GapReview gap in review.Gaps)
        {
            GapPromises.Keep(gap.Run, facts);
            if (gap.Advice?.Run is { } advised)
                GapPromises.Keep(advised, facts);
            facts.Read("advice", gap.Advice);
            facts.Read("bracket", gap.Bracket);
        }

        facts.Answer = review.Verdict.ToString();
        facts.Read("review", review.Stages);
        facts.Read("odds", review.Odds?.Run);
        facts.Text("text", review.ToString());
        string json = review.ToJson();
        facts.Text("json", json);
        using JsonDocument document = JsonDocument.Parse(json);
    }
}
