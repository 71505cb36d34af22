using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>A one-dimensional run: steps, joint, events, marks of the grain surface.</summary>
internal sealed class OneDimensionalSolver
{
    private readonly GapProblem problem;
    private readonly GapModel.OneDimensional model;
    private readonly SolverOptions options;
    private readonly GapParameters p;
    private readonly OneDimensionalGap gap;
    private readonly IgnitionTracker ignition;
    private readonly OneDimensionalRecord record;
    private readonly RunEvents events;
    private readonly JointMechanics joint;
    private readonly ProgressReport? progress;
    private readonly double[] profileTimes;
    private readonly GapTotals first;
    private SolverFailure? failure;

    /// <summary>
    /// Time and ledger at the last mark: where a run ends whose numbers have ended.
    /// </summary>
    private (double Time, GapLedger Ledger) lastSound;
    private int profilesKept;
    private readonly bool untilLit;
    private double pressure;
    private double atVent;
    private double atNozzle;

    public OneDimensionalSolver(GapProblem problem, GapModel.OneDimensional model, SolverOptions options,
        IProgress<SolveProgress>? progress, bool untilLit = false)
    {
        this.untilLit = untilLit;
        this.problem = problem;
        this.model = model;
        this.options = options;
        p = GapToSi.ToSi(problem);
        double length = problem.Design.Tube.Length.Meters;
        double reach = problem.Design.MixingAndHeat.StirringReachInBores * p.Profile.BoreBelow(length);
        gap = new OneDimensionalGap(p, model, length, reach);
        ignition = new IgnitionTracker(p);
        record = new OneDimensionalRecord(p, gap, ignition);
        record.Start();
        events = new RunEvents(p, ignition);
        joint = new JointMechanics(p, JointPhase.Slides);
        this.progress = progress is null ? null : new ProgressReport(progress, p.Horizon);
        profileTimes = [.. model.ProfileTimes.Select(t => t.Seconds).Where(t => t >= 0 && t <= p.Horizon).Order()];
        pressure = p.OutsidePressure;
        first = gap.Totals;
        lastSound = Account;
    }

    private (double Time, GapLedger Ledger) Account => (gap.Time, new GapLedger(first, gap.Given, gap.Left, gap.Totals));

    public GapRun Run(CancellationToken cancel)
    {
        KeepProfiles();
        while (gap.Time < Math.Min(p.Horizon, events.Last))
        {
            cancel.ThrowIfCancellationRequested();
            if (!Step() || Happens() || (untilLit && ignition.IsLit))
                break;
        }

        if (failure?.Kind != SolverFailureKind.NonFiniteState)
        {
            record.Finish();
            lastSound = Account;
        }

        events.Finish(failure is not null);
        progress?.Done(lastSound.Time);
        TubeFlow tube = gap.Tube;
        return new GapRun(new GapRunData
        {
            Problem = problem,
            Model = model,
            Options = options,
            Parameters = p,
            Course = record.Course,
            Ignition = ignition,
            Events = events,
            End = lastSound.Time,
            Ledger = lastSound.Ledger,
            Statistics = new SolverWork(tube.Steps, tube.Repeats, tube.Steps + tube.Repeats, tube.Steps),
            Failure = failure,
        });
    }

    private bool Step()
    {
        if (gap.Tube.Steps + gap.Tube.Repeats >= options.MaxSteps)
            return Fail(SolverFailureKind.TooManySteps, $"All {options.MaxSteps} steps were used up at {gap.Time * 1e3:G4} ms.");
        if (events.Joint == JointPhase.Held
            && joint.Acceleration<Real>(pressure, joint.Breakaway<Real>(gap.JointTravel) + gap.TapeHolds) > 0)
            events.Move(gap.Time);

        double until = Math.Min(Math.Min(ignition.Next, Math.Min(p.Horizon, events.Last)),
            profilesKept < profileTimes.Length ? profileTimes[profilesKept] : p.Horizon);
        double acceleration = events.Joint == JointPhase.Held
            ? 0
            : joint.Acceleration<Real>(pressure, joint.Friction<Real>(gap.JointTravel));
        bool taken = gap.Step(until, events.Joint, acceleration);
        if (!gap.HoldsGas)
            return Fail(SolverFailureKind.NonFiniteState, $"Tube, chamber or jacket has no finite density and pressure above zero any "
                + $"more at {gap.Time * 1e3:G4} ms; the run is given up to {lastSound.Time * 1e3:G4} ms.");
        return taken || Fail(SolverFailureKind.StepTooSmall, $"A cell lost its gas at {gap.Time * 1e3:G4} ms however short the step.");
    }

    private bool Fail(SolverFailureKind kind, Invariant.Handler message)
    {
        failure = SolverFailure.At(kind, gap.Time, message.ToStringAndClear());
        return false;
    }

    /// <summary>What the step has brought; true when the run is over.</summary>
    private bool Happens()
    {
        double time = gap.Time, before = time - gap.LastStep;
        pressure = gap.Pressure;
        double vent = gap.ProductsAtLastVent, nozzle = gap.Nozzle.ProductFraction;
        Reached(GapEventKind.FrontAtLastVent, atVent, vent, before, time);
        Reached(GapEventKind.ProductsAtNozzle, atNozzle, nozzle, before, time);
        if (time >= gap.PiecesAtNozzle)
            events.Reach(GapEventKind.PiecesAtNozzle, gap.PiecesAtNozzle);
        if (time >= gap.SourceEnd)
            events.EndSource(gap.SourceEnd);

        (atVent, atNozzle) = (vent, nozzle);
        ignition.Note(pressure, nozzle);
        if (time >= ignition.Next)
        {
            record.Mark();
            lastSound = Account;
        }

        KeepProfiles();
        progress?.Reached(time);

        if (JointChanges(before, time))
            return true;
        if (events.Joint == JointPhase.Slides || !events.SourceEnded
            || gap.HighestPressure(pressure) > (1 + GapSystem.SpentShare) * p.OutsidePressure)
            return false;
        events.Spend(time);
        return true;
    }

    /// <summary>
    /// Lets a sliding joint open or come to rest; true when the run ends with that, or with bodies pushed together
    /// again.
    /// </summary>
    private bool JointChanges(double before, double time)
    {
        if (events.Joint == JointPhase.Open)
            return gap.JointTravel < p.Engagement;
        if (events.Joint != JointPhase.Slides)
            return false;
        if (gap.JointTravel >= p.Engagement)
        {
            double late = gap.SlideSpeed > 0 ? (gap.JointTravel - p.Engagement) / gap.SlideSpeed : 0, opens = Math.Max(before, time - late);
            return events.Open(opens, time);
        }

        if (gap.SlideSpeed < 0)
        {
            gap.Rest();
            events.Rest(time);
        }

        return false;
    }

    /// <summary>
    /// Enters the first time at which half of the gas somewhere is products, on a straight line over the step.
    /// </summary>
    private void Reached(GapEventKind kind, double from, double to, double before, double time)
    {
        if (from < GapSystem.Reached && to >= GapSystem.Reached)
            events.Reach(kind, before + (time - before) * (GapSystem.Reached - from) / (to - from));
    }

    private void KeepProfiles()
    {
        for (; profilesKept < profileTimes.Length && profileTimes[profilesKept] <= gap.Time; profilesKept++)
            record.KeepProfile();
    }
}
