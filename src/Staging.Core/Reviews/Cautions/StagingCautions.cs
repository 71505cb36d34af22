using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;

namespace Staging.Core.Reviews;

/// <summary>
/// Cautions about the stagings: booster motors, gap length, vents, the margin of the race, and the unlit case.
/// </summary>
internal static class StagingCautions
{
    private const double DependableGap = 0.25;   // m, about 10 in
    private const double FlownGap = 0.46;        // m, about 18 in
    private const double CustomaryVent = 28.3e-6; // m2, one hole of 6 mm
    private const double DeepDeadEnd = 1;        // bores below the nozzle plane; stirring reaches one to two
    private const double ThinMargin = 1e-3;      // s, a judgement: source and retention move the race by milliseconds
    private const double ThinSurface = (JudgedRanges.MaxIgnition - JudgedRanges.MinIgnition) / 2; // K, half of what is defended

    public static IEnumerable<Caution> For(StagingPlan plan, FlightRun flight, ImmutableArray<GapReview> gaps)
    {
        ImmutableArray<Stage> stages = plan.Flight.Stages.Items;
        for (int i = 1; i < stages.Length; i++)
        {
            string below = stages[i - 1].Name, name = stages[i].Name;
            foreach (Caution caution in stages[i].Ignition.Match(
                _ => [],
                _ => [BoosterMotor(below), Tape(below, name)],
                gap => gap.Gap is GapIgnition ? [BoosterMotor(below)] : [BoosterMotor(below), ForeignGap(name)],
                _ => (Caution[])[Electronics(name)]))
            {
                yield return caution;
            }
        }

        foreach (GapReview gap in gaps)
        {
            yield return GapLength(gap);
            yield return Vents(gap);
            yield return Outcome(gap);
        }

        foreach (StagingReport staging in flight.Stagings)
            yield return SpeedAndHeight(staging);
        foreach (FailureCase failure in flight.FailureCases)
            yield return Failure(failure);
    }

    private static Caution BoosterMotor(string lower) => Reminder(
        "CAU020",
        "booster motor",
        $"{lower} must carry a black-powder booster motor (delay code 0, no cap, no clay); no other lights the next this way.",
        "booster motors carry delay code 0; other propellants need electronics");

    private static Caution Tape(string lower, string upper) => Reminder(
        "CAU021",
        "motors in contact",
        $"{lower} to {upper}: tape the motors with thin plastic film, which lets go when heated, not with paper tape.",
        "direct staging is taped with thin plastic film");

    private static Caution ForeignGap(string upper) => Reminder(
        "CAU026",
        "gap of another model",
        $"{upper} is lit by a gap model that this review cannot look into: its length, vents and margin are not judged here.",
        "stagings fail; plan for the unlit stage");

    private static Caution Electronics(string upper) => Reminder(
        "CAU027",
        "electronics",
        $"{upper} is lit by electronics: arm them on the pad only, with guards on speed, height and tilt, and test them on the ground "
            + $"without a motor.",
        "electronics are armed last and disarmed first, with a guard against lighting off vertical");

    private static Caution Reminder(string code, string subject, string text, string practice) =>
        new(code, subject, outsideRule: false, text, SafetyCodes.Practice(practice));

    private static Caution GapLength(GapReview gap)
    {
        double length = gap.Run.Problem.Design.Tube.Length.Meters;
        return new Caution(
            code: "CAU022",
            subject: "gap length",
            outsideRule: length > DependableGap,
            text: Invariant.Text($"{length * 1e3:F0} mm between the motors; up to about {DependableGap * 1e3:F0} mm is called "
                + $"dependable, {FlownGap * 1e3:F0} mm has been flown, 900 mm is reported but doubtful."),
            rule: SafetyCodes.Practice("gap lengths that have been flown"));
    }

    private static Caution Vents(GapReview gap)
    {
        GapDesign design = gap.Run.Problem.Design;
        double area = design.TotalVentArea.SquareMeters;
        double last = design.Vents.IsEmpty ? 0 : design.Vents.Max(v => v.Station.Meters);
        double depth = (design.Tube.Length.Meters - last) / design.Tube.BoreBelow(design.Tube.Length).Meters;
        bool none = design.Vents.IsEmpty;
        return new Caution(
            code: "CAU025",
            subject: "vents",
            outsideRule: none || depth > DeepDeadEnd,
            text: none
                ? "The gap has no vents: the air ahead of the hot gas has nowhere to go."
                : Invariant.Text($"{area * 1e6:F0} mm2 in all, the last {depth:F1} bores below the upper nozzle; practice puts them "
                    + $"right below it, and calls {CustomaryVent * 1e6:F0} mm2, one hole of 6 mm, enough for ordinary small models."),
            rule: SafetyCodes.Practice(
                "vents go right below the upper nozzle; a total area like one 6 mm hole serves ordinary small models"));
    }

    private static Caution Outcome(GapReview gap)
    {
        GapOutcome outcome = gap.Run.Outcome;
        bool thin = outcome is GapOutcome.Lit lit
            && (lit.MarginToSeparation?.Seconds < ThinMargin || lit.SurfaceMargin.Kelvins < ThinSurface);
        return new Caution(
            code: "CAU023",
            subject: "ignition race",
            outsideRule: !outcome.IsLit || thin,
            text: $"{gap.Staging.UpperStage}: {Race(outcome)}{Heat(gap)} Source, retention and ignition temperature "
                + $"are uncertain by tens of per cent: one nominal answer is not a probability.",
            rule: new Provenance
            {
                Source = Invariant.Text($"Judgement: a race won by less than {ThinMargin * 1e3:F0} ms, or a surface less than "
                    + $"{ThinSurface:F0} K above ignition, is no margin, for the inputs are known no better"),
                How = Evidence.Judgement,
            });
    }

    private static string Race(GapOutcome outcome) => outcome switch
    {
        GapOutcome.Lit { MarginToSeparation: { Seconds: >= 0 } margin } lit => Invariant.Text(
            $"lit {margin.Milliseconds:F1} ms before the joint opens, the surface {lit.SurfaceMargin.Kelvins:F0} K above ignition."),
        GapOutcome.Lit { MarginToSeparation: null } lit => Invariant.Text(
            $"lit while the joint holds, the surface {lit.SurfaceMargin.Kelvins:F0} K above ignition."),
        _ => $"{outcome.Cause} {outcome.Remedy}",
    };

    /// <summary>How much of the heat at the grain rests on the least known number.</summary>
    private static string Heat(GapReview gap)
    {
        if (gap.Run.Outcome is not GapOutcome.Lit lit)
            return "";
        GapSnapshot at = gap.Run.At(lit.Time);
        double share = at.Particles / (at.Particles + at.Convection + at.Radiation);
        return Invariant.Text(
            $" At that moment {share:P0} of the heat comes from impinging particles, whose efficiency nobody has published.");
    }

    private static Caution SpeedAndHeight(StagingReport staging)
    {
        double speed = staging.Velocity?.MetersPerSecond ?? staging.State.Speed.MetersPerSecond,
            height = staging.Height?.Meters ?? staging.State.Height.Meters;
        string when = staging.Lit ? "lights" : "stays cold, after burnout";
        return new Caution(
            code: "CAU028",
            subject: "staging speed and height",
            outsideRule: speed < LaunchCautions.MinGuideExitSpeed,
            text: Invariant.Text($"{staging.UpperStage} {when} at {speed:F1} m/s, {height:F0} m up; guidance asks for "
                + $"{LaunchCautions.MinGuideExitSpeed:F0} to 15 m/s."),
            rule: SafetyCodes.Guidance("13 to 15 m/s before the fins steer, at staging as at the end of the guide"));
    }

    private static Caution Failure(FailureCase failure)
    {
        string lost = string.Join(", ", failure.Bodies.Where(b => b.Outcome is not FlightOutcome.Landed).Select(b => b.Name));
        FlightOutcome.Landed? landed = lost.Length > 0 ? null : failure.HardestLanding?.Outcome as FlightOutcome.Landed;
        return new Caution(
            code: "CAU024",
            subject: failure.Kind is FailureKind.UnlitAndJoined or FailureKind.UnlitAndParted ? "unlit stage" : "failure in flight",
            outsideRule: landed is null || landed.KineticEnergy.Joules >= DescentCautions.DebrisLimit,
            text: landed is null
                ? $"If {failure.Description}: no landing of {lost} was found; treat it as unknown."
                : Invariant.Text(
                    $"If {failure.Description}: {failure.HardestLanding!.Name} comes down {landed.Time.Seconds:F0} s after launch at "
                        + $"{landed.Speed.MetersPerSecond:F0} m/s with "
                            + $"{landed.KineticEnergy.Joules:F1} J; {DescentCautions.DebrisLimit:F1} J counts as debris. Tell everybody "
                                + $"to look up."),
            rule: SafetyCodes.DebrisEnergy);
    }
}
