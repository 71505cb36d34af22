using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Events;

/// <summary>(9) An event function that is not a number is a failure, never an event that did not happen.</summary>
public class Rule9UndefinedTests
{
    [Theory]
    [InlineData(0.0)] // At the start.
    [InlineData(0.4)] // On the way.
    public void Not_a_number_fails_the_run_and_names_the_function(double from)
    {
        var system = new TimeFunctions((_ => 1, Watching.Note), (t => t >= from ? double.NaN : 1, Watching.End));
        Integrator<Tsitouras54> integrator = Watching.Steps(0.25);
        Assert.Equal(PhaseEnd.Failed, integrator.Go(ref system, 1));
        Assert.Equal(SolverFailureKind.NonFiniteState, integrator.Failure!.Kind);
        Assert.Contains("Event function 1", integrator.Failure.Message, StringComparison.Ordinal);
        Assert.InRange(integrator.Failure.Time.Seconds, from, from + 0.0625);
    }

    [Fact]
    public void Not_a_number_inside_a_bracket_fails_the_run()
    {
        var system = new TimeFunctions((t => t < 0.3 ? -1 : t > 0.301 ? 1 : double.NaN, Watching.End));
        Integrator<Tsitouras54> integrator = Watching.Steps(0.25);
        Assert.Equal(PhaseEnd.Failed, integrator.Go(ref system, 1));
        Assert.InRange(integrator.Failure!.Time.Seconds, 0.3, 0.301);
    }

    [Fact]
    public void Infinity_has_a_sign_and_is_located()
    {
        FiredEvent fired = Assert.Single(Watching.Events(
            0.25, 4, 1, (t => t < 0.3 ? double.NegativeInfinity : double.PositiveInfinity, Watching.Note)));
        Assert.InRange(fired.Time, 0.3, 0.3 + Watching.Tolerance);
    }
}
