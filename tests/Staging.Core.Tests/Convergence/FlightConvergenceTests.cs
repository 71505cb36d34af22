using Staging.Core.Flight;
using Staging.Core.Solving;
using Staging.Core.Tests.Flight;

namespace Staging.Core.Tests.Convergence;

/// <summary>Event times and heights close on one value as the tolerance falls.</summary>
public class FlightConvergenceTests
{
    [Fact]
    public void Event_times_converge_with_the_tolerance()
    {
        FlightRun reference = Fly(1e-13);
        double before = double.PositiveInfinity;
        foreach (double tolerance in (ReadOnlySpan<double>)[1e-4, 1e-6, 1e-8, 1e-10])
        {
            FlightRun run = Fly(tolerance);
            Assert.Equal(reference.Main.Events.Select(e => e.Kind), run.Main.Events.Select(e => e.Kind));
            double worst = run.Main.Events.Zip(reference.Main.Events).Max(p => Math.Abs(p.First.Time.Seconds - p.Second.Time.Seconds));
            Assert.True(worst < Math.Max(0.2 * before, 1e-8), $"Tolerance {tolerance}: worst event {worst:G3} s after {before:G3} s.");
            Assert.True(worst < Math.Max(3e3 * tolerance, 1e-8), $"Tolerance {tolerance}: worst event {worst:G3} s.");
            before = worst;
        }
    }

    /// <summary>A step allocates nothing: a run of many more steps allocates the same bytes.</summary>
    [Fact]
    public void Steps_allocate_nothing()
    {
        long few = Memory(1e-6), many = Memory(1e-12);
        Assert.True(many - few < 256, $"{many - few} bytes more for a tighter tolerance.");
    }

    private static FlightRun Fly(double tolerance, bool keepTracks = true) => TestFlights.TwoStages().Flown(new FlightOptions
    {
        KeepTracks = keepTracks,
        Scope = FlightScope.UppermostStage,
        Solver = new SolverOptions { RelativeTolerance = tolerance, ScaledAbsoluteTolerance = tolerance / 100 },
    });

    private static long Memory(double tolerance) => Allocated.By(() => Fly(tolerance, keepTracks: false));
}
