using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;

namespace Staging.Core.Tests.Samples;

/// <summary>The plan files beside the demo: each is read and has no error, and its review ends as its name says.</summary>
public class PlanFilesTests
{
    public static TheoryData<string, bool> Plans => new()
    {
        // Whether every stage lights, as the model has it; the reasons stand in the reviews.
        { "closed-gap", false },
        { "cluster", true },
        { "contact-film", false },
        { "contact-paper", false },
        { "dart", false },
        { "electronics", true },
        { "electronics-refused", false },
        { "nested-tubes", true },
        { "nested-tubes-inner-only", false },
        { "sliding-motor-tube", true },
        { "three-stages", true },
        { "too-heavy", false },
        { "vents-too-large", false },
    };

    [Theory]
    [MemberData(nameof(Plans))]
    public void A_plan_file_is_read_checked_and_reviewed(string name, bool lights)
    {
        StagingReview review = PlanFiles.Review(name);
        StagingPlan plan = review.Plan;
        Assert.DoesNotContain(plan.Check(), f => f.Severity == FindingSeverity.Error);
        Assert.True(lights == review.EveryStageLights, review.ToString());
        Assert.StartsWith("invented: ", plan.Name, StringComparison.Ordinal);
        Assert.Equal(plan, StagingPlan.Parse(plan.ToJson(PlanForm.Brief)));
    }

    [Fact]
    public void Every_plan_file_is_in_that_list() => Assert.Equal(
        Directory.GetFiles(PlanFiles.Folder, "*.json").Select(Path.GetFileNameWithoutExtension).Order(), Plans.Select(p => p.Data.Item1).Order());

    [Fact]
    public void Motors_in_contact_need_no_layout_and_get_no_advice()
    {
        GapReview gap = Assert.Single(PlanFiles.Review("contact-film").Gaps);
        Assert.Null(gap.Advice);
        Assert.Null(gap.Bracket);
        Assert.Contains("the plan has no layout of new vents", gap.ToString(), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => PlanFiles.Read("contact-film").QuestionBelow());
    }

    [Fact]
    public void A_plan_file_of_motors_in_contact_is_the_gap_of_the_library_in_contact()
    {
        GapDesign expected = StartingGaps.Bore18mm.InContact(JointTape.ThinPlasticFilm).Design;
        GapDesign read = PlanFiles.Read("contact-film").Flight.Stages[1].Gap()!.Design;
        Assert.Equal(expected.Tube.Length.Meters, read.Tube.Length.Meters, 1e-12);
        Assert.Equal(expected.Joint.Coupler.Engagement.Meters, read.Joint.Coupler.Engagement.Meters, 1e-12);
        Assert.Equal(
            expected with { Tube = read.Tube, Joint = read.Joint },
            read);
        Assert.Equal(expected.Joint.Tape, read.Joint.Tape);
    }
}
