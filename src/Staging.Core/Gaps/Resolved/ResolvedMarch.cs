using System.Globalization;
using Staging.Core.Solving;

namespace Staging.Core.Gaps.Resolved;

/// <summary>One resolved run: steps, joint, events, looks at the grain.</summary>
internal sealed class ResolvedMarch
{
    private readonly GapProblem problem;
    private readonly GapModel.Resolved model;
    private readonly SolverOptions options;
    private readonly GapParameters p;
    private readonly ResolvedGap gap;
    private readonly ResolvedWatch watch;
    private readonly JointMechanics joint;
    private readonly ProgressReport? progress;
    private readonly double[] profileTimes;
    private readonly List<(GapEventKind Kind, double Time)> events = [(GapEventKind.BurnThrough, 0)];
    private SolverFailure? failure;
    private int profilesKept;
    private bool sliding;
    private bool burnt;
    private double pressure;
    private double atVent;
    private double atNozzle;

    public ResolvedMarch(GapProblem problem, GapModel.Resolved model, SolverOptions options, IProgress<SolveProgress>? progress)
    {
        this.problem = problem;
        this.model = model;
        this.options = options;
        p = GapLowering.Lower(problem);
        double length = problem.Design.Tube.Length.Meters;
        double reach = problem.Design.Closures.StirringReachInBores * p.Profile.BoreBelow(length);
        gap = new ResolvedGap(p, model, length, reach);
        watch = new ResolvedWatch(p, gap);
        joint = new JointMechanics(p, JointPhase.Slides);
        this.progress = progress is null ? null : new ProgressReport(progress, p.Horizon);
        profileTimes = [.. model.ProfileTimes.Select(t => t.Seconds).Where(t => t >= 0 && t <= p.Horizon).Order()];
        pressure = p.OutsidePressure;
    }

    public GapRun Run(CancellationToken cancel)
    {
        GapTotals first = gap.Totals;
        KeepProfiles();
        while (gap.Time < p.Horizon)
        {
            cancel.ThrowIfCancellationRequested();
            if (!Step() || Happens())
                break;
        }

        watch.Finish();
        if (!double.IsNaN(watch.LitTime))
            events.Add((GapEventKind.Lit, watch.LitTime));
        progress?.Done(gap.Time);
        TubeFlow tube = gap.Tube;
        return GapLifting.Run(problem, model, options, new GapFinish
        {
            Parameters = p,
            Course = watch.Course,
            Extremes = watch,
            Happened = events,
            End = gap.Time,
            Ledger = GapLifting.Ledger(first, gap.Given, gap.Left, gap.Totals),
            Statistics = new SolverStatistics(tube.Steps, tube.Repeats, tube.Steps + tube.Repeats, tube.Steps),
            Failure = failure,
        });
    }

    private bool Step()
    {
        if (gap.Tube.Steps + gap.Tube.Repeats >= options.MostSteps)
            return Fail(SolverFailureKind.TooManySteps, $"All {options.MostSteps} steps were used up at {gap.Time * 1e3:G4} ms.");
        if (!sliding && joint.Acceleration(pressure, p.Breakaway) > 0)
        {
            sliding = true;
            events.Add((GapEventKind.JointMoves, gap.Time));
        }

        double until = Math.Min(Math.Min(watch.Next, p.Horizon), profilesKept < profileTimes.Length ? profileTimes[profilesKept] : p.Horizon);
        double acceleration = sliding ? joint.Acceleration(pressure, joint.Friction(gap.Slide)) : 0;
        return gap.Step(until, sliding, acceleration)
            || Fail(SolverFailureKind.StepTooSmall, $"A cell lost its gas at {gap.Time * 1e3:G4} ms however short the step.");
    }

    private bool Fail(SolverFailureKind kind, FormattableString message)
    {
        failure = SolverFailure.At(kind, gap.Time, message.ToString(CultureInfo.InvariantCulture));
        return false;
    }

    /// <summary>What the step has brought; true when the run is over.</summary>
    private bool Happens()
    {
        double time = gap.Time, before = time - gap.LastStep;
        pressure = gap.Pressure;
        double vent = gap.ProductsAtLastVent, nozzle = gap.Nozzle(out _).ProductFraction;
        Reached(GapEventKind.FrontAtLastVent, atVent, vent, before, time);
        Reached(GapEventKind.ProductsAtNozzle, atNozzle, nozzle, before, time);
        if (!burnt && time >= gap.SourceEnd)
        {
            burnt = true;
            events.Add((GapEventKind.FragmentsBurnt, gap.SourceEnd));
        }

        (atVent, atNozzle) = (vent, nozzle);
        watch.Stepped(pressure, nozzle);
        if (time >= watch.Next)
            watch.Mark();
        KeepProfiles();
        progress?.Reached(time);

        if (sliding && gap.Slide >= p.Engagement)
        {
            double late = gap.SlideSpeed > 0 ? (gap.Slide - p.Engagement) / gap.SlideSpeed : 0;
            events.Add((GapEventKind.JointOpens, Math.Max(before, time - late)));
            return true;
        }

        if (sliding && gap.SlideSpeed < 0)
        {
            sliding = false;
            gap.Rest();
            events.Add((GapEventKind.JointRests, time));
        }

        if (!burnt || Math.Max(pressure, gap.ChamberPressure) > (1 + GapSystem.SpentShare) * p.OutsidePressure)
            return false;
        events.Add((GapEventKind.Spent, time));
        return true;
    }

    /// <summary>Enters the first time at which half of the gas somewhere is products, on a straight line over the step.</summary>
    private void Reached(GapEventKind kind, double from, double to, double before, double time)
    {
        if (from < GapSystem.Reached && to >= GapSystem.Reached && !events.Exists(e => e.Kind == kind))
            events.Add((kind, before + (time - before) * (GapSystem.Reached - from) / (to - from)));
    }

    private void KeepProfiles()
    {
        for (; profilesKept < profileTimes.Length && profileTimes[profilesKept] <= gap.Time; profilesKept++)
            watch.KeepProfile();
    }
}
