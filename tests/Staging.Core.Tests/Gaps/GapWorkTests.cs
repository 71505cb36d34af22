using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Solving;
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
        Assert.Equal(new SolverWork(1174, 37, 7273, 7930), StartingGaps.Bore18mm.Solve().Statistics.Work);
        Assert.Equal(new SolverWork(5583, 452, 59171, 42155) { JacobianCalls = 1461, Factorisations = 1883 }, Vented.Solve().Statistics.Work);
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
