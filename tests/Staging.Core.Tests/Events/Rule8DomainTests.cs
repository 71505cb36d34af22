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
