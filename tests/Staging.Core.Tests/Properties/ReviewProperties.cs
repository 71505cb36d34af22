using FsCheck.Xunit;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Reviews;
using Staging.Core.Sizing;

namespace Staging.Core.Tests.Properties;

/// <summary>What holds of every review, whatever its gap does.</summary>
public class ReviewProperties
{
    [Property(Arbitrary = [typeof(ReviewCases)], MaxTest = 10)]
    public void Gap_and_flight_tell_one_story(ReviewCase c)
    {
        StagingReview review = c.Plan.Review(cases: 0);
        GapReview gap = Assert.Single(review.Gaps);
        BurnThroughState s = gap.Staging.State;
        double dynamic = 0.5 * s.AirDensity.KilogramsPerCubicMeter * Math.Pow(s.Speed.MetersPerSecond, 2);
        Assert.Equal(s.AirPressure.Pascals + c.HoleCoefficient * dynamic, gap.Run.Problem.Surroundings.Pressure.Pascals, 1e-12 * s.AirPressure.Pascals);
        Assert.Equal(s.MassAhead + s.MassBehind, gap.Run.Problem.Bodies.MassAhead + gap.Run.Problem.Bodies.MassBehind);
        Assert.Equal(gap.Run.Outcome.IsLit, review.EveryStageLights);
        Assert.Equal(gap.Run.Outcome.IsLit, review.Flight.Main.Find(FlightEventKind.Ignition, "sustainer") is not null);
        if (gap.Run.Outcome.IsLit)
            Assert.Equal(gap.Run.TimeOf(GapEventKind.Lit)!.Value.Seconds, gap.Staging.Ignition!.Value.Seconds - s.Time.Seconds, 1e-9);
        else if (gap.Run.Outcome is GapOutcome.PushedApart apart)
            Assert.Equal(apart.Time.Seconds, gap.Staging.Separation!.Value.Seconds - s.Time.Seconds, 1e-9);
    }

    [Property(Arbitrary = [typeof(ReviewCases)], MaxTest = 6)]
    public void The_advice_lights_in_the_flight_that_asked_for_it(ReviewCase c)
    {
        StagingReview review = c.Plan.Review(cases: 0);
        GapReview gap = Assert.Single(review.Gaps);
        if (gap.Advice!.Recommended is not { } area)
            return;
        Assert.True(gap.Run.Problem.WithVents(gap.Advice.Layout, area).Solve().Outcome.IsLit);
    }

    [Property(Arbitrary = [typeof(ReviewCases)], MaxTest = 6)]
    public void Every_case_and_every_body_has_its_caution_and_every_caution_its_rule(ReviewCase c)
    {
        StagingReview review = c.Plan.Review(cases: 0);
        Assert.Equal(review.Flight.FailureCases.Length, review.Cautions.Count(x => x.Code == "CAU024"));
        Assert.Equal(review.Flight.Bodies.Length, review.Cautions.Count(x => x.Code == "CAU030"));
        Assert.All(review.Cautions, x => Assert.False(string.IsNullOrWhiteSpace(x.Rule.Source) || string.IsNullOrWhiteSpace(x.Text)));
        Assert.All(review.Cautions, x => Assert.DoesNotContain("NaN", x.Text, StringComparison.Ordinal));
    }

    [Property(Arbitrary = [typeof(ReviewCases)], MaxTest = 2)]
    public void A_review_is_the_same_each_time(ReviewCase c)
    {
        StagingReview one = c.Plan.Review(cases: 0), two = c.Plan.Review(cases: 0);
        Assert.Equal(one.ToString(), two.ToString());
        Assert.Equal(one.ToJson(), two.ToJson());
        Assert.Equal(one.Gaps[0].Run.Outcome.ToString(), two.Gaps[0].Run.Outcome.ToString());
        Assert.Equal(one.Flight.Apogee, two.Flight.Apogee);
    }
}
