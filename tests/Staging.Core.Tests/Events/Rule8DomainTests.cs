using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Events;

/// <summary>(8) Nothing is evaluated before the start or beyond the stop time.</summary>
public class Rule8DomainTests
{
    [Property(Arbitrary = [typeof(Spans)], MaxTest = 300)]
    public bool Every_evaluation_lies_between_start_and_stop(Span span)
    {
        var system = new TimeFunctions((t => Math.Sin(40 * t), Watching.Note), (t => t - span.Start, Watching.Note), (t => t - span.Stop, Watching.Note));
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]) { Time = span.Start };
        return integrator.Go(ref system, span.Stop) == PhaseEnd.StopTime
            && integrator.Time == span.Stop
            && system.Times.Count > 7
            && system.Times.TrueForAll(t => t >= span.Start && t <= span.Stop);
    }

    [Theory]
    [InlineData(0.64, 1.8)]
    [InlineData(0.49, 3.4)]
    [InlineData(0.24, 3.9)]
    public void One_step_to_the_stop_lies_within_where_start_and_length_add_up_to_more(double start, double stop)
    {
        Assert.True(start + (stop - start) > stop, "the sum of start and length rounds to beyond the stop");
        var system = new TimeFunctions((t => 1, Watching.Note));
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]) { Time = start, FixedStep = 10 };
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref system, stop));
        Assert.Equal(1, integrator.Statistics.AcceptedSteps);
        Assert.InRange(system.Times.Max(), start, stop);
    }

    public sealed record Span(double Start, double Stop);

    /// <summary>Intervals of 1 ns to 10 s anywhere in the first hour.</summary>
    public static class Spans
    {
        public static Arbitrary<Span> Arbitrary() =>
            (from start in Unit()
             from length in Unit()
             select new Span(3600 * start, 3600 * start + Math.Pow(10, -9 + 10 * length))).ToArbitrary();

        private static Gen<double> Unit() => Gen.Choose(0, int.MaxValue).Select(n => (double)n / int.MaxValue);
    }
}
