using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>What a gap run takes. It moves only when the method or its control is changed on purpose.</summary>
public class GapWorkTests
{
    /// <summary>Most memory that a kept step may take [B]: five numbers a state, three times, and what doubling and blocks leave over.</summary>
    private const int StepMemory = 8 * (5 * 18 + 2 * 3) + 200;

    private static readonly GapProblem Vented = StartingGaps.Bore18mm with
    {
        Design = StartingGaps.Bore18mm.Design with
        {
            Vents = [Vent.BelowNozzle(
                StartingGaps.Bore18mm.Design.Tube,
                new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = 4 },
                Length.FromMillimeters(1))],
        },
    };

    [Fact]
    public void Work_of_the_starting_gap_is_pinned()
    {
        Assert.Equal(new SolverWork(214, 26, 1900, 1358) { JacobianCalls = 157, Factorisations = 175 }, StartingGaps.Bore18mm.Solve().Statistics.Work);
        Assert.Equal(new SolverWork(343, 42, 2865, 2339) { JacobianCalls = 291, Factorisations = 325 }, Vented.Solve().Statistics.Work);
    }

    /// <summary>A finer tolerance would ask for the rounding of what parcels exchange.</summary>
    [Fact]
    public void No_absolute_tolerance_is_finer_than_a_trillionth()
    {
        SolverWork Work(double absolute) =>
            StartingGaps.Bore18mm.Solve(options: new() { RelativeTolerance = 1e-6, ScaledAbsoluteTolerance = absolute }).Statistics.Work;
        Assert.Equal(Work(1e-12), Work(1e-16));
        Assert.NotEqual(Work(1e-11), Work(1e-12));
    }

    /// <summary>Between two burn-throughs the gap bleeds down and rests: ten times the wait is not ten times the work.</summary>
    [Fact]
    public void A_motor_that_is_still_closed_costs_no_steps()
    {
        SolverStatistics soon = Pair(0.05).Solve().Statistics, late = Pair(0.5).Solve().Statistics;
        Assert.InRange(late.AcceptedSteps + late.RejectedSteps, 500, 1.5 * (soon.AcceptedSteps + soon.RejectedSteps));

        static GapProblem Pair(double delay)
        {
            var motor = (GapSource.EndBurner)StartingGaps.Bore18mm.Design.Source;
            var source = new GapSource.Cluster { Motors = [motor, motor with { Delay = Duration.FromSeconds(delay) }] };
            return Vented.With(d => d with { Source = source, Joint = Bench.Joint(2000) }) with { Horizon = Duration.FromSeconds(2 * delay) };
        }
    }

    [Theory]
    [InlineData(10)]
    [InlineData(40)]
    [InlineData(100)]
    [InlineData(400)]
    [InlineData(1400)]
    public void The_usual_tolerances_move_nothing_by_more_than_one_part_in_20_000(double area)
    {
        GapProblem gap = StartingGaps.Bore18mm.WithVents(new VentLayout { HoleCount = 2 }, Area.FromSquareMillimeters(area));
        GapRun usual = gap.Solve(), fine = gap.Solve(options: new() { RelativeTolerance = 1e-9, ScaledAbsoluteTolerance = 1e-11 });
        Assert.Equal(fine.Outcome.GetType(), usual.Outcome.GetType());
        Assert.Equal(fine.Events.Select(e => e.Kind), usual.Events.Select(e => e.Kind));
        foreach ((GapEvent one, GapEvent other) in fine.Events.Zip(usual.Events))
            Assert.InRange((other.Time - one.Time).Seconds, -5e-5 * one.Time.Seconds, 5e-5 * one.Time.Seconds);
        Assert.InRange(usual.PeakGaugePressure / fine.PeakGaugePressure - 1, -5e-5, 5e-5);
        Assert.InRange(usual.PeakGrainSurface.Kelvins / fine.PeakGrainSurface.Kelvins - 1, -5e-5, 5e-5);
    }

    [Fact]
    public void Cases_of_studies_answer_as_fine_runs_do_at_less_than_half_the_work()
    {
        GapProblem gap = StartingGaps.Bore18mm.WithVents(new VentLayout { HoleCount = 4 }, Area.FromSquareMillimeters(30));
        var inputs = new InputSet<GapProblem>(gap, GapInputs.JudgedFor(gap.Design));
        var design = new SampleDesign(DesignKind.LowDiscrepancy, 24, inputs.Inputs.Length, 0);
        int quick = 0, usual = 0, lit = 0;
        for (int i = 0; i < 24; i++)
        {
            GapProblem at = inputs.At(inputs.Values(design, i));
            GapRun fine = at.Solve(), coarse = at.Solve(options: SolverOptions.ForStudies);
            Assert.Equal(fine.Outcome.GetType(), coarse.Outcome.GetType());
            Assert.Equal(fine.PeakGrainSurface.Kelvins, coarse.PeakGrainSurface.Kelvins, 2.0);
            (quick, usual) = (quick + coarse.Statistics.DerivativeCalls, usual + fine.Statistics.DerivativeCalls);
            lit += fine.Outcome.IsLit ? 1 : 0;
        }

        Assert.InRange(lit, 1, 23);
        Assert.InRange(quick, 1, usual / 2);
    }

    [Fact]
    public void Options_that_were_asked_for_hold_for_cases_too()
    {
        SolverOptions own = SolverOptions.ForGaps with { MaxSteps = 5000 };
        Assert.Equal(own, own.OfCases);
        Assert.Equal(SolverOptions.ForStudies, SolverOptions.ForGaps.OfCases);
    }

    [Fact]
    public void A_run_allocates_what_its_course_keeps_and_little_else()
    {
        Vented.Solve();
        long before = GC.GetAllocatedBytesForCurrentThread();
        GapRun run = Vented.Solve();
        long taken = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.InRange(taken, 0, 100_000 + StepMemory * run.Statistics.AcceptedSteps);
    }
}
