using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using static Staging.Core.Reviews.CautionRules;

namespace Staging.Core.Reviews;

/// <summary>Cautions about the stagings: booster motors, gap length, vents, the margin of the race, and the unlit branch.</summary>
internal static class StagingCautions
{
    private const double DependableGap = 0.25;   // m, about 10 in
    private const double FlownGap = 0.46;        // m, about 18 in
    private const double ThinMargin = 1e-3;      // s, a judgement: source and retention move the race by milliseconds

    public static IEnumerable<Caution> For(StagingPlan plan, FlightRun flight, ImmutableArray<GapReview> gaps)
    {
        ImmutableArray<Stage> stages = plan.Flight.Stages;
        for (int i = 1; i < stages.Length; i++)
        {
            if (stages[i].Ignition is StageIgnition.ByGap or StageIgnition.ByContact)
                yield return BoosterMotor(stages[i - 1]);
            if (stages[i].Ignition is StageIgnition.ByContact)
                yield return Tape(stages[i - 1], stages[i]);
        }

        foreach (GapReview gap in gaps)
        {
            yield return GapLength(gap);
            yield return Outcome(gap);
        }

        foreach (StagingReport staging in flight.Stagings)
            yield return SpeedAndHeight(staging);
        foreach (FlightBranch branch in flight.Branches)
            yield return Unlit(branch);
    }

    private static Caution BoosterMotor(Stage lower) => new()
    {
        Code = "CAU020",
        Subject = "booster motor",
        OutsideRule = lower.Motor.ForwardEnd is not MotorForwardEnd.BurnsThrough,
        Text = $"{lower.Name} must carry a black-powder booster motor, delay code 0, without cap or clay; no other motor lights the next this way.",
        Rule = SafetyCodes.Practice("booster motors carry delay code 0; other propellants need electronics"),
    };

    private static Caution Tape(Stage lower, Stage upper) => new()
    {
        Code = "CAU021",
        Subject = "motors in contact",
        OutsideRule = false,
        Text = $"{lower.Name} to {upper.Name}: tape the motors with thin plastic film, which lets go when heated, not with paper tape.",
        Rule = SafetyCodes.Practice("direct staging is taped with thin plastic film"),
    };

    private static Caution GapLength(GapReview gap)
    {
        double length = gap.Run.Problem.Design.Tube.Length.Meters;
        return new Caution
        {
            Code = "CAU022",
            Subject = "gap length",
            OutsideRule = length > DependableGap,
            Text = Say($"{length * 1e3:F0} mm between the motors; up to about {DependableGap * 1e3:F0} mm is called dependable, {FlownGap * 1e3:F0} mm has been flown, 900 mm is reported but doubtful."),
            Rule = SafetyCodes.Practice("gap lengths that have been flown"),
        };
    }

    private static Caution Outcome(GapReview gap)
    {
        bool thin = gap.Run.Outcome is GapOutcome.Lit { MarginToSeparation: { } margin } && margin.Seconds < ThinMargin;
        return new Caution
        {
            Code = "CAU023",
            Subject = "ignition race",
            OutsideRule = !gap.Run.Outcome.IsLit || thin,
            Text = $"{gap.Staging.UpperStage}: {gap.Run.Outcome.Cause} {gap.Run.Outcome.Cure} Source, retention and ignition temperature are uncertain by tens of per cent: one nominal answer is not a probability.",
            Rule = SafetyCodes.Practice("stagings fail; plan for the unlit stage"),
        };
    }

    private static Caution SpeedAndHeight(StagingReport staging)
    {
        double speed = staging.Velocity?.MetersPerSecond ?? staging.State.Speed.MetersPerSecond, height = staging.Height?.Meters ?? staging.State.Height.Meters;
        string when = staging.Lit ? "lights" : "stays cold, after burnout";
        return new Caution
        {
            Code = "CAU025",
            Subject = "staging speed and height",
            OutsideRule = speed < LaunchCautions.LeastGuideExitSpeed,
            Text = Say($"{staging.UpperStage} {when} at {speed:F1} m/s, {height:F0} m up; guidance asks for {LaunchCautions.LeastGuideExitSpeed:F0} to 15 m/s."),
            Rule = SafetyCodes.Guidance("13 to 15 m/s before the fins steer, at staging as at the end of the guide"),
        };
    }

    private static Caution Unlit(FlightBranch branch)
    {
        if (branch.Hardest?.Outcome is not FlightOutcome.Landed landed)
        {
            return new Caution
            {
                Code = "CAU024",
                Subject = branch.Kind is BranchKind.UnlitAndJoined or BranchKind.UnlitAndParted ? "unlit stage" : "failure in flight",
                OutsideRule = true,
                Text = $"If {branch.Description}: no landing was found; treat it as unknown.",
                Rule = SafetyCodes.DebrisEnergy,
            };
        }

        double energy = landed.KineticEnergy.Joules;
        return new Caution
        {
            Code = "CAU024",
            Subject = branch.Kind is BranchKind.UnlitAndJoined or BranchKind.UnlitAndParted ? "unlit stage" : "failure in flight",
            OutsideRule = energy >= DescentCautions.DebrisLimit,
            Text = Say($"If {branch.Description}: {branch.Hardest.Name} comes down {landed.Time.Seconds:F0} s after launch at {landed.Speed.MetersPerSecond:F0} m/s with {energy:F1} J ({DescentCautions.DebrisLimit:F1} J counts as debris). Everybody on the field must be told to look up."),
            Rule = SafetyCodes.DebrisEnergy,
        };
    }
}
