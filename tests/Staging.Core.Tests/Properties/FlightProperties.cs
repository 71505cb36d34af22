using FsCheck.Xunit;
using Staging.Core.Flight;
using Staging.Core.Solving;
using Staging.Core.Tests.Flight;
using UnitsNet;

namespace Staging.Core.Tests.Properties;

public class FlightProperties
{
    [Property(Arbitrary = [typeof(FlightCases)], MaxTest = 100)]
    public bool More_drag_never_flies_higher(FlightCase c)
    {
        var lean = new FlightOptions { Scope = FlightScope.UppermostStage, KeepTracks = false };
        return c.PlanWithDrag(c.Drag * 1.1).Flown(lean).Apogee < c.Plan.Flown(lean).Apogee;
    }

    [Property(Arbitrary = [typeof(FlightCases)], MaxTest = 100)]
    public bool Mass_is_accounted_for(FlightCase c) => Math.Abs(c.Plan.Flown().MassLedger().Residual) < 1e-13;

    [Property(Arbitrary = [typeof(FlightCases)], MaxTest = 50)]
    public bool Energy_is_accounted_for(FlightCase c)
    {
        // Each step may err by the tolerance, so the whole by the tolerance times the steps.
        FlightRun run = c.Plan.Flown();
        return Math.Abs(run.Main.EnergyLedger().Residual) < run.Options.Solver.RelativeTolerance * run.Statistics.AcceptedSteps;
    }

    [Property(Arbitrary = [typeof(FlightCases)], MaxTest = 100)]
    public bool Events_come_in_order_and_every_body_lands(FlightCase c)
    {
        FlightRun run = c.Plan.Flown();
        return run.Bodies.Concat(run.Branches.SelectMany(b => b.Bodies)).All(b =>
            b.Outcome is FlightOutcome.Landed
            && b.Events.Zip(b.Events.Skip(1)).All(p => p.First.Time <= p.Second.Time)
            && b.Events[^1].Kind == FlightEventKind.Landing);
    }

    [Property(Arbitrary = [typeof(FlightCases)], MaxTest = 50)]
    public bool A_later_start_shifts_every_time_and_changes_nothing_else(FlightCase c)
    {
        const double Shift = 1.25;
        FlightRun first = c.Plan.Flown();
        BodyFlight now = first.Main, later = c.PlanWithDrag(c.Drag, Shift).Flown().Main;
        // Shifted times round differently, which may turn a step that just passed into one that is repeated: a tolerance a step, at most.
        double slack = first.Options.Solver.RelativeTolerance * first.Statistics.AcceptedSteps;
        return now.Events.Length == later.Events.Length
            && Math.Abs(later.Apogee!.Value.Meters / now.Apogee!.Value.Meters - 1) < slack
            && now.Events.Zip(later.Events).Skip(1).All(p => Math.Abs(p.Second.Time.Seconds - p.First.Time.Seconds - Shift) < slack * now.End.Seconds);
    }

    [Property(Arbitrary = [typeof(FlightCases)], MaxTest = 50)]
    public bool Splitting_steps_changes_nothing_beyond_the_tolerance(FlightCase c)
    {
        FlightRun whole = c.Plan.Flown();
        FlightRun split = c.Plan.Flown(new FlightOptions { Solver = new SolverOptions { LongestStep = Duration.FromMilliseconds(20) } });
        // Each step may err by the tolerance, so the two may differ by the tolerance times the steps of the coarser one.
        double slack = whole.Options.Solver.RelativeTolerance * whole.Statistics.AcceptedSteps;
        return Math.Abs(split.Apogee!.Value.Meters / whole.Apogee!.Value.Meters - 1) < slack
            && Math.Abs(split.Main.Landing().Time.Seconds / whole.Main.Landing().Time.Seconds - 1) < slack
            && split.Statistics.AcceptedSteps > whole.Statistics.AcceptedSteps;
    }

    [Property(Arbitrary = [typeof(FlightCases)], MaxTest = 50)]
    public bool The_course_passes_through_its_events(FlightCase c) => c.Plan.Flown().Bodies.All(b => b.Events.All(e =>
        Math.Abs(b.At(e.Time).Height.Meters - e.After.Height.Meters) < 1e-3
        && Math.Abs(b.JustBefore(e.Time).Velocity.MetersPerSecond - e.Before.Velocity.MetersPerSecond) < 1e-3));
}
